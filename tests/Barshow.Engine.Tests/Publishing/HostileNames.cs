namespace Barshow.Engine.Tests.Publishing;

/// <summary>Names that try to leave the place they are written to.</summary>
public static class HostileNames
{
    public static TheoryData<string> All => new(Texts);

    public static IReadOnlyList<string> Texts { get; } =
    [
        "</script><script>alert(1)</script>",
        "</script><!-- & é",
        "<img src=x onerror=alert(1)>",
        "\" onmouseover=\"alert(1)",
        "' onmouseover='alert(1)",
        "=cmd()",
        "=HYPERLINK(\"http://example.org\",\"here\")",
        "+1+1",
        "-1+1",
        "@SUM(1)",
        "＝cmd()",
        "\t=cmd()",
        "\r=cmd()",
        "  =cmd()",
        "\u202Egnp.exe\u202C",
        "\u200Fright\u2067to left\u2069",
        "a, b; c: d \\ \"e\"",
        "first\nsecond\r\nthird\rfourth\u2028fifth",
        "00:00.000 --> 00:01.000",
        "x\n\nNOTE y",
        "\0\u0001\u001B[31mred\u0007",
        "half a pair \uD83C and \uDF79",
        "🍹 ½ é Ł",
        "BEGIN:VEVENT\r\nSUMMARY:x",
        new string('n', 10_000),
        string.Concat(Enumerable.Repeat("é½", 5_000)),
        "",
        " ",
    ];
}
