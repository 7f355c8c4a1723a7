using Barshow.Engine.Names;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Web.Desk;

/// <summary>What the user asks of a lineup, as the form holds it until it is run. Lives with the page; it is not saved.</summary>
public sealed class LineupWishes
{
    /// <summary>How many drinks.</summary>
    public int Count { get; set; }

    /// <summary>Drinks that must be in.</summary>
    public List<Slug> Must { get; } = [];

    /// <summary>Drinks that must not be in.</summary>
    public List<Slug> LeaveOut { get; } = [];

    /// <summary>Ingredients no drink may need.</summary>
    public List<Slug> Without { get; } = [];

    /// <summary>Floors for methods, glasses, tags and families.</summary>
    public List<Floor> Floors { get; } = [];

    /// <summary>The aims, most important first.</summary>
    public List<Aim> Aims { get; } = [];

    /// <summary>The most things to buy; null for no limit.</summary>
    public int? MostThings { get; set; }

    /// <summary>The most the basket may cost; null for no limit.</summary>
    public decimal? MostMoney { get; set; }

    /// <summary>Months since a drink was featured; null for no such requirement.</summary>
    public int? FreshMonths { get; set; }

    /// <summary>The most of one family; null for no cap.</summary>
    public int? MostOfAFamily { get; set; }

    /// <summary>At least so many without alcohol.</summary>
    public int AlcoholFree { get; set; }

    /// <summary>The most bottles for the shoot; null for no limit.</summary>
    public int? ShootBottles { get; set; }

    /// <summary>Whether every drink pours the bottle.</summary>
    public bool BottleInEvery { get; set; }

    /// <summary>Whether a base may be swapped for it.</summary>
    public bool BaseSwaps { get; set; }

    /// <summary>Whether one bottle carries the viewer's lineup.</summary>
    public bool OneBottleAtHome { get; set; }

    /// <summary>Whether the glasses go round.</summary>
    public bool GlassStock { get; set; }

    /// <summary>Whether the tools are there.</summary>
    public bool ToolStock { get; set; }

    /// <summary>The wishes of a question.</summary>
    public static LineupWishes Of(LineupQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var wishes = new LineupWishes
        {
            Count = question.Count,
            MostThings = question.MostThings,
            MostMoney = question.MostMoney,
            FreshMonths = question.FreshMonths,
            MostOfAFamily = question.MostOfAFamily,
            AlcoholFree = question.AlcoholFree,
            ShootBottles = question.ShootBottles,
            BottleInEvery = question.BottleInEvery,
            BaseSwaps = question.BaseSwaps,
            OneBottleAtHome = question.OneBottleAtHome,
            GlassStock = question.GlassStock,
            ToolStock = question.ToolStock,
        };
        wishes.Must.AddRange(question.MustHave);
        wishes.LeaveOut.AddRange(question.LeaveOut);
        wishes.Without.AddRange(question.Without);
        wishes.Floors.AddRange(question.Floors);
        wishes.Aims.AddRange(question.Aims);
        return wishes;
    }

    /// <summary>A question with these wishes.</summary>
    public LineupQuestion Put(LineupQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question with
        {
            Count = Count,
            MustHave = [.. Must],
            LeaveOut = [.. LeaveOut],
            Without = [.. Without],
            Floors = [.. Floors],
            Aims = [.. Aims],
            MostThings = MostThings,
            MostMoney = MostMoney,
            FreshMonths = FreshMonths,
            MostOfAFamily = MostOfAFamily,
            AlcoholFree = AlcoholFree,
            ShootBottles = ShootBottles,
            BottleInEvery = BottleInEvery,
            BaseSwaps = BaseSwaps,
            OneBottleAtHome = OneBottleAtHome,
            GlassStock = GlassStock,
            ToolStock = ToolStock,
        };
    }

    /// <summary>Moves an aim up (-1) or down (1) the list.</summary>
    public void Move(Aim aim, int by)
    {
        var place = Aims.IndexOf(aim);
        var to = place + by;
        if (place < 0 || to < 0 || to >= Aims.Count)
            return;
        (Aims[place], Aims[to]) = (Aims[to], Aims[place]);
    }
}
