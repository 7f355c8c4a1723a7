using Barshow.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Archive;

/// <summary>Which table holds what an entry of the archive holds.</summary>
internal static class ArchiveTables
{
    private static readonly IReadOnlyDictionary<Type, string> Kinds = new Dictionary<Type, string>
    {
        [typeof(HouseRow)] = ArchiveFormat.House,
        [typeof(KitRow)] = ArchiveFormat.Kit,
        [typeof(IngredientRow)] = ArchiveFormat.Ingredients,
        [typeof(DrinkRow)] = ArchiveFormat.Drinks,
        [typeof(EpisodeRow)] = ArchiveFormat.Episodes,
        [typeof(FeatureRow)] = ArchiveFormat.Featured,
    };

    /// <summary>The table of a row, as the change history names it.</summary>
    public static string Table(BarshowDb db, Type row) => db.Model.FindEntityType(row)!.GetTableName()!;

    /// <summary>The entry for each table.</summary>
    public static IReadOnlyDictionary<string, string> KindsByTable(BarshowDb db) => Kinds.ToDictionary(each => Table(db, each.Key), each => each.Value);
}
