using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Barshow.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class BenchLog : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "BenchEntries",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Episode = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    Entry = table.Column<string>(type: "TEXT", nullable: false),
                    CameAt = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BenchEntries", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_BenchEntries_Episode_Device_Sequence_Entry",
                table: "BenchEntries",
                columns: new[] { "Episode", "Device", "Sequence", "Entry" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "BenchEntries");
        }
    }
}
