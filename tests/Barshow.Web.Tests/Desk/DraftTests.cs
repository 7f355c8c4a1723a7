using Barshow.Data.Conflicts;
using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Web.Desk;

namespace Barshow.Web.Tests.Desk;

/// <summary>Two people change one thing: nothing that was typed is lost, and both sides are shown.</summary>
public class DraftTests
{
    private readonly Shelf _shelf = new(new Episode { Slug = Slug.Parse("film"), Title = "Film", Theme = "sours" });

    [Fact]
    public async Task A_change_is_saved_at_once_and_can_be_taken_back()
    {
        using var draft = _shelf.Open();

        await draft.ChangeAsync(film => film with { Title = "Nine drinks" });
        Assert.Equal(("Nine drinks", 2), (_shelf.Now.Value.Title, draft.Version));

        await draft.UndoAsync();
        Assert.Equal(("Film", 3), (_shelf.Now.Value.Title, draft.Version));
        Assert.False(draft.CanUndo);
    }

    [Fact]
    public async Task A_conflict_keeps_what_was_typed_and_shows_both_sides()
    {
        using var mine = _shelf.Open();
        using var theirs = _shelf.Open();

        await theirs.ChangeAsync(film => film with { Title = "Their title" });
        await mine.ChangeAsync(film => film with { Title = "My title" });

        Assert.Equal("My title", mine.Value.Title);
        Assert.Equal("Their title", _shelf.Now.Value.Title);
        Assert.Equal("Not saved: someone else saved this meanwhile.", mine.Problem);
        var difference = Assert.Single(mine.Conflict!.Differences);
        Assert.Equal(("Film", "My title", "Their title", true), (difference.Before, difference.Mine, difference.Theirs, difference.Clash));
    }

    [Theory]
    [InlineData(Side.Mine, "My title")]
    [InlineData(Side.Theirs, "Their title")]
    public async Task The_user_chooses_and_the_choice_is_saved(Side side, string title)
    {
        using var mine = _shelf.Open();
        using var theirs = _shelf.Open();
        await theirs.ChangeAsync(film => film with { Title = "Their title", Theme = "highballs" });
        await mine.ChangeAsync(film => film with { Title = "My title" });

        await mine.SettleAsync(new Dictionary<string, Side> { ["title"] = side });

        Assert.Null(mine.Problem);
        Assert.Equal((title, "highballs"), (_shelf.Now.Value.Title, _shelf.Now.Value.Theme));
    }

    [Fact]
    public async Task What_cannot_be_written_stays_on_the_screen_and_is_tried_again()
    {
        using var draft = _shelf.Open();
        _shelf.Fails = new IOException("The disk is full.");

        await draft.ChangeAsync(film => film with { Title = "Nine drinks" });
        Assert.Equal(("Nine drinks", "Not saved: The disk is full. What you typed is still here."), (draft.Value.Title, draft.Problem));

        _shelf.Fails = null;
        await draft.RetryAsync();
        Assert.Null(draft.Problem);
        Assert.Equal("Nine drinks", _shelf.Now.Value.Title);
    }

    [Fact]
    public async Task A_change_that_changes_nothing_is_not_saved()
    {
        using var draft = _shelf.Open();

        await draft.ChangeAsync(film => film);

        Assert.Equal(1, _shelf.Now.Version);
    }

    [Fact]
    public void The_shoot_day_asks_the_same_question_whatever_the_title_is()
    {
        var film = _shelf.Now.Value;

        Assert.Equal(ShootPlans.QuestionOf(film), ShootPlans.QuestionOf(film with { Title = "Other", Ticked = ["juice:lime-juice"], PublishDate = new(2026, 12, 18) }));
        Assert.NotEqual(ShootPlans.QuestionOf(film), ShootPlans.QuestionOf(film with { Takes = 2 }));
        Assert.NotEqual(ShootPlans.QuestionOf(film), ShootPlans.QuestionOf(film with { CallTime = new(9, 0) }));
    }

    /// <summary>Keeps one thing as a store does: a save on an older version is a conflict.</summary>
    private sealed class Shelf(Episode first)
    {
        public Stored<Episode> Now { get; private set; } = new(first, 1, DateTimeOffset.UnixEpoch, "");

        public Exception? Fails { get; set; }

        public Draft<Episode> Open() => new(Now, (film, version) =>
        {
            if (Fails is not null)
                return Task.FromException<SaveResult<Episode>>(Fails);
            if (version != Now.Version)
                return Task.FromResult<SaveResult<Episode>>(new SaveResult<Episode>.Conflict(Now));
            Now = new(film, version + 1, DateTimeOffset.UnixEpoch, "");
            return Task.FromResult<SaveResult<Episode>>(new SaveResult<Episode>.Saved(Now));
        });
    }
}
