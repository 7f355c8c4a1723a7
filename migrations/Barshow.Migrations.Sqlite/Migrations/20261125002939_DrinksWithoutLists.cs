using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Barshow.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class DrinksWithoutLists : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // In SQLite's own words: the usual way copies the whole table and cannot be done in one transaction.
            migrationBuilder.Sql("""ALTER TABLE "Drinks" DROP COLUMN "Ingredients";""");
            migrationBuilder.Sql("""ALTER TABLE "Drinks" DROP COLUMN "Tags";""");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Ingredients",
                table: "Drinks",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Drinks",
                type: "TEXT",
                nullable: false,
                defaultValue: "");
        }
    }
}
