using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>What a description has to say, in one place.</summary>
internal static class DescriptionSentences
{
    private const string Subject = "Description";

    public static Finding SlotUnknown(string slot, int line) => new(FindingCatalogue.TemplateSlotUnknown, "Template",
        string.Create(CultureInfo.InvariantCulture, $"Line {line} of the template holds {slot}, which is no part of a description; it was left out."),
        "Use one of " + string.Join(", ", Enum.GetValues<DescriptionPart>().Select(part => "{" + DescriptionTemplate.SlotOf(part) + "}")) + ".")
    {
        Line = line,
        Said = slot,
    };

    public static Finding SlotTwice(string slot, int line) => new(FindingCatalogue.TemplateSlotUnknown, "Template",
        string.Create(CultureInfo.InvariantCulture, $"Line {line} of the template holds {slot} a second time; it was left out there."),
        "Keep the slot once.")
    {
        Line = line,
        Said = slot,
    };

    public static Finding SlotMissing(DescriptionPart part) => new(FindingCatalogue.TemplateSlotMissing, "Template",
        $"The template has no {{{DescriptionTemplate.SlotOf(part)}}}, which is never left out; it was added.",
        $"Put {{{DescriptionTemplate.SlotOf(part)}}} where you want it.");

    public static Finding DisclosureNotFirst() => new(FindingCatalogue.DisclosureNotFirst, Subject,
        "The template puts text before the disclosure, and viewers see only the first lines.",
        "Put {disclosure} at the very start of the template.");

    public static Finding DisclosureUnwritten(string sponsor, string written) => new(FindingCatalogue.DisclosureUnwritten, Subject,
        $"{sponsor} pays, but the brief holds no disclosure; \"{written}\" stands first until it does.",
        "Write the disclosure as agreed with the sponsor.")
    {
        Expected = written,
    };

    public static Finding LinkUnusable(Link link) => new(FindingCatalogue.LinkUnusable, link.Label.Length > 0 ? link.Label : "Link",
        $"\"{link.Address}\" is no full web address, so viewers cannot follow \"{link.Label}\"; it is printed as it stands.",
        "Give the address in full, beginning with https://.")
    {
        Said = link.Address,
    };

    public static Finding Shortened(DescriptionPart part, Shortening shortening, string loses, int before, int limit) => new(FindingCatalogue.DescriptionShortened, Subject,
        shortening is Shortening.LeftOut
            ? string.Create(CultureInfo.InvariantCulture, $"The description was {before:#,0} bytes and {limit:#,0} are allowed, so {NameOf(part)} was left out.")
            : string.Create(CultureInfo.InvariantCulture, $"The description was {before:#,0} bytes and {limit:#,0} are allowed, so {NameOf(part)} was shortened: it goes without {loses}."),
        "Shorten your own text in the template, or change what is shortened first.");

    public static Finding TooLong(int bytes, int characters, int limit) => new(FindingCatalogue.DescriptionTooLong, Subject,
        string.Create(CultureInfo.InvariantCulture, $"The description is {bytes:#,0} bytes ({characters:#,0} characters) and {limit:#,0} bytes are allowed; all that may be shortened is shortened, and the page would cut off the cautions."),
        "Shorten your own text, the names of the drinks or their notes, or film fewer drinks.");

    public static Finding TitleTooLong(string title, int characters, int limit) => new(FindingCatalogue.TitleTooLong, title.Length <= 80 ? title : title[..80] + "…",
        string.Create(CultureInfo.InvariantCulture, $"The title has {characters} characters and {limit} are allowed."),
        string.Create(CultureInfo.InvariantCulture, $"Take away {characters - limit} characters."));

    public static Finding AmountUnknown(string drink, string ingredient, int? line) => new(FindingCatalogue.LineWithoutAmount, ingredient,
        $"{ingredient} in {drink} has no amount, so the description prints its name alone.",
        "Give an amount, or say \"top\", \"to taste\" or how many.")
    {
        Drink = drink,
        Ingredient = ingredient,
        Line = line,
    };

    public static string NameOf(DescriptionPart part) => part switch
    {
        DescriptionPart.MakeAhead => "the make-ahead part",
        DescriptionPart.StandIns => "the part on stand-ins",
        DescriptionPart.Shopping => "the shopping list",
        DescriptionPart.Questions => "the part of often asked questions",
        DescriptionPart.Tools => "the list of tools",
        DescriptionPart.Earlier => "the list of earlier features",
        DescriptionPart.Credits => "the list of credits",
        _ => "{" + DescriptionTemplate.SlotOf(part) + "}",
    };
}
