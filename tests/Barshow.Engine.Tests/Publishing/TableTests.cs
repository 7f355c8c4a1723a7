using System.Globalization;
using Barshow.Engine.Publishing.Tables;
using CsvHelper;

namespace Barshow.Engine.Tests.Publishing;

public class TableTests
{
    [Fact]
    public void The_running_order_has_a_record_for_each_block()
    {
        var records = Read(RunningOrderTable.Write(ShootDays.Order, ShootDays.Results()));

        Assert.Equal(8, records.Count);
        Assert.Equal(["start", "end", "minutes", "kind", "what", "drink", "take", "station", "method", "glass", "backdrop", "beside", "filmed", "reason"], records[0]);
        Assert.Equal(["2027-03-06T10:05", "2027-03-06T10:12", "7", "take", "Take 1 of Harbour Sour", "Harbour Sour", "1", "Bench", "shaken", "coupe", "", "", "", "Light to strong"], records[2]);
        Assert.Equal("wash-up", records[7][3]);
    }

    [Fact]
    public void The_mise_list_has_a_record_for_each_task_with_its_hours()
    {
        var records = Read(MiseTable.Write(ShootDays.Mise, ShootDays.Results()));

        Assert.Equal(4, records.Count);
        Assert.Equal(
            ["2027-03-05T19:40", "2027-03-05T19:50", "10", "the day before", "Kitchen", "Make rich syrup.", "225 ml · 7½ oz", "Measure 200 g sugar, 100 g water. Stir until clear.", "", "2027-03-05T09:00", "2027-03-05T20:00", "Harbour Sour", "It keeps.", "yes", "prep:rich-syrup"],
            records[1]);
    }

    [Fact]
    public void The_shoots_order_tells_need_packs_and_cost()
    {
        var results = ShootDays.Results();

        var records = Read(ShoppingTable.Write(results.ShootBasket!, results));

        // Two takes of 2 oz, 45 ml and 60 ml are 330 ml, and 3 % spill makes 339.9 ml: one bottle of 700 ml.
        var rum = Assert.Single(records, record => record[0] == "White rum");
        Assert.Equal(["White rum", "700 ml bottle", "1", "339.9", "ml", "0", "360.1", "20.00", "USD", "Harbour Sour, Dune, Kelp", ""], rum);
    }

    [Fact]
    public void The_viewers_list_can_be_ticked_and_ends_with_the_caution()
    {
        var results = SaltLane.Results(SaltLane.Evening);

        var text = ViewerShopping.Write(results.ViewerBasket!, results);

        Assert.StartsWith("Three drinks, one bottle of white rum\nTo make each of the 3 drinks once\n\n[ ] White rum: 700 ml bottle, 165 ml used\n[ ] Lime: 2\n", text, StringComparison.Ordinal);
        Assert.Contains("How far the first things go\nWith white rum and aromatic bitters: 1 of 3 drinks (Kelp)\n", text, StringComparison.Ordinal);
        Assert.EndsWith("Follow local rules and licensed practice.\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Hostile_names_run_in_no_table(string name)
    {
        var episode = ShootDays.Episode with { Lineup = [ShootDays.Episode.Lineup[0] with { Spec = ShootDays.Episode.Lineup[0].Spec with { Name = name } }] };
        var results = ShootDays.Results(episode);

        foreach (var table in new[] { RunningOrderTable.Write(ShootDays.Order, results), MiseTable.Write(ShootDays.Mise, results), ShoppingTable.Write(results.ShootBasket!, results) })
            foreach (var cell in Read(table).SelectMany(record => record))
                Assert.DoesNotContain(cell.TrimStart(' ').Take(1), c => "=+-@\t\r\n＝＋－＠".Contains(c, StringComparison.Ordinal));
    }

    private static List<string[]> Read(string csv)
    {
        using var parser = new CsvParser(new StringReader(csv), CultureInfo.InvariantCulture);
        var records = new List<string[]>();
        while (parser.Read())
            records.Add(parser.Record!);
        return records;
    }
}
