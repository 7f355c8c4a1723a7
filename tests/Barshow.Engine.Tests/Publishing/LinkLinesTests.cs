using Barshow.Engine.Episodes;

namespace Barshow.Engine.Tests.Publishing;

public class LinkLinesTests
{
    [Theory]
    [InlineData("Jigger guide: https://example.org/jiggers", "Jigger guide", "https://example.org/jiggers")]
    [InlineData("jigger guide, https://example.org/jiggers", "jigger guide", "https://example.org/jiggers")]
    [InlineData("Jigger guide https://example.org/a:b", "Jigger guide", "https://example.org/a:b")]
    [InlineData("https://example.org/", "", "https://example.org/")]
    [InlineData("Syrup film: example dot org", "Syrup film", "example dot org")]
    [InlineData("just words", "", "just words")]
    public void A_line_is_a_label_and_an_address(string line, string label, string address) =>
        Assert.Equal(new Link(label, address), Assert.Single(LinkLines.Read(line)));

    [Fact]
    public void What_is_written_is_read_back_and_empty_lines_are_left_out()
    {
        Link[] links = [new("Jiggers: the guide", "https://example.org/jiggers"), new("", "https://example.org/"), new("Film", "example dot org")];

        Assert.Equal(links, LinkLines.Read("\r\n" + LinkLines.Write(links) + "\n\n"));
    }
}
