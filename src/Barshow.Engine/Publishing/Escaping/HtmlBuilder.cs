using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>Builds an HTML page in which nothing that was typed can become markup: the text of the source is markup, and every hole in it is escaped.</summary>
/// <example><c>html.Add($"&lt;td&gt;{name}&lt;/td&gt;")</c> escapes the name.</example>
public sealed class HtmlBuilder
{
    private readonly StringBuilder _html = new();

    /// <summary>Adds markup without holes.</summary>
    public HtmlBuilder Add([ConstantExpected] string markup)
    {
        _html.Append(markup);
        return this;
    }

    /// <summary>Adds markup whose holes are escaped.</summary>
    public HtmlBuilder Add([InterpolatedStringHandlerArgument("")] in Markup markup)
    {
        _ = markup;
        return this;
    }

    /// <summary>Adds JSON as a script element of data; <see cref="ScriptJson"/> keeps it inside.</summary>
    public HtmlBuilder AddData(System.Text.Json.Nodes.JsonNode data)
    {
        _html.Append("<script type=\"application/ld+json\">\n").Append(ScriptJson.Write(data)).Append("\n</script>\n");
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _html.ToString();

    /// <summary>Writes the pieces of an interpolated string as they come.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Markup
    {
        private readonly HtmlBuilder _builder;

        /// <summary>Begins a piece of markup.</summary>
        public Markup(int literalLength, int formattedCount, HtmlBuilder builder)
        {
            _ = (literalLength, formattedCount);
            _builder = builder;
        }

        /// <summary>The source's own markup.</summary>
        public void AppendLiteral(string markup) => _builder._html.Append(markup);

        /// <summary>A hole with text.</summary>
        public void AppendFormatted(string? text) => _builder._html.Append(HtmlText.Of(text));

        /// <summary>A hole with a number.</summary>
        public void AppendFormatted(int number) => _builder._html.Append(number.ToString(CultureInfo.InvariantCulture));
    }
}
