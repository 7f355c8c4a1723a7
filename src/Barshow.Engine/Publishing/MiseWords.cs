using Barshow.Engine.Shooting.Mise;

namespace Barshow.Engine.Publishing;

/// <summary>What the sessions of the preparation are called in lists.</summary>
public static class MiseWords
{
    /// <summary>The session in plain words: "the day before".</summary>
    public static string NameOf(MiseSession session) => session switch
    {
        MiseSession.DayBefore => "the day before",
        MiseSession.BeforeTheCall => "before the call",
        MiseSession.DuringTheShoot => "during the shoot",
        _ => throw new ArgumentOutOfRangeException(nameof(session), session, "No such session."),
    };
}
