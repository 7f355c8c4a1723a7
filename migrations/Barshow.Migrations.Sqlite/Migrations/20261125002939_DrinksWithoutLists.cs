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
            migrationBuilder.DropColumn(
                name: "Ingredients",
                table: "Drinks");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Drinks");
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
