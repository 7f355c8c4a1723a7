namespace Barshow.Engine.Publishing.Site;

/// <summary>The style of the hosted pages: one file, no fonts or anything else fetched, and a print style.</summary>
internal static class SiteStyle
{
    public const string Css = """
        :root { color-scheme: light; --ground: #E9ECE1; --sheet: #FAFAF4; --ink: #16221C; --ink-2: #46544B; --rule: #C3CAB8; --green: #14513C; --brass-line: #A37C22 }
        * { box-sizing: border-box }
        body { margin: 0; background: var(--ground); color: var(--ink); font: 1.0625rem/1.55 "Atkinson Hyperlegible Next", "Segoe UI", system-ui, sans-serif; font-variant-numeric: tabular-nums lining-nums; overflow-wrap: anywhere }
        main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1.25rem 3rem }
        h1 { font-size: clamp(1.75rem, 1.2rem + 2vw, 2.4rem); line-height: 1.15; margin: 0 0 .5rem }
        h2 { font-size: 1.25rem; line-height: 1.3; margin: 2rem 0 .5rem; break-after: avoid }
        p { margin: 0 0 .75rem; max-width: 65ch }
        a { color: var(--green) }
        a:focus-visible { outline: 2px solid var(--green); outline-offset: 2px }
        .disclosure { font-weight: 700; border-left: 4px solid var(--ink); padding-left: .75rem }
        .lead, .small { color: var(--ink-2) }
        .small { font-size: .9375rem }
        .lines { list-style: none; margin: 0; padding: 0; border-top: 1.5px solid var(--brass-line) }
        .lines li { padding: .45rem 0; border-bottom: 1px solid var(--rule) }
        .drinks { list-style: none; margin: 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(10rem, 1fr)); gap: 1rem }
        .drinks a { display: block; background: var(--sheet); border: 1px solid var(--rule); padding: .75rem; text-decoration: none; font-weight: 600 }
        .drinks img, .picture { display: block; width: 100%; height: auto }
        .picture { max-width: 18rem; margin: 1rem 0; background: var(--sheet) }
        ol, ul { padding-left: 1.35rem; margin: 0 }
        li { margin: 0 0 .35rem }
        @media print {
          @page { margin: 12mm }
          body { background: #fff; color: #000; font-size: 10.5pt }
          main { max-width: none; padding: 0 }
          nav { display: none }
          .picture { max-width: 45mm; float: right; margin: 0 0 4mm 4mm }
          .lines li, li { break-inside: avoid }
          main a[href^="http"]::after { content: " (" attr(href) ")"; font-size: 85% }
        }
        """;
}
