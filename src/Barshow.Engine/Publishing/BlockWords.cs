using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Publishing;

/// <summary>What the blocks of a shoot day are called in lists.</summary>
public static class BlockWords
{
    /// <summary>The kind in plain words.</summary>
    public static string NameOf(BlockKind kind) => kind switch
    {
        BlockKind.SponsorRead => "sponsor read",
        BlockKind.CloseUps => "close-ups",
        BlockKind.WashUp => "wash-up",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
