namespace Barshow.Engine.Measures.Reading;

/// <content>The small words between number, unit and name.</content>
internal static partial class Lexicon
{
    private static void AddRoles(Dictionary<string, Lexeme> words)
    {
        Play(Role.Article, "a an");
        Play(Role.Of, "of o");
        Play(Role.And, "and n");
        Play(Role.In, "in");
        Play(Role.To, "to");
        Play(Role.Or, "or");
        Play(Role.Point, "point");
        Play(Role.About, "about approx approximately roughly around circa ca nearly almost just exactly maybe perhaps between max maximum min minimum least most around");
        Play(Role.Manner, "scant generous heaped heaping rounded level good big large small little tiny healthy hearty heavy light fat full wide narrow broad short long thin thick medium barely whole tight loose packed strong wee conservative fresh flat nice decent slight single thumb-size");
        Play(Role.Times, "x times");
        Play(Role.Invitation, "add pour use take measure stir shake muddle then followed next squeeze-in dash-in plus with finally first");
        Play(Role.Yield, "juice zest peel peels rind rinds white whites yolk yolks pulp");
        Play(Role.Optional, "optional optionally opt");
        Play(Role.NoteStart, "freshly finely thinly lightly gently preferably ideally for plus such per cut from");
        Play(Role.Treatment, "juiced halved quartered muddled torn slapped sliced chopped peeled pitted cubed diced grated zested crushed chilled strained bruised smacked spanked trimmed squeezed beaten");
        Play(Role.NumberInName, "proof year years yr yrs yo percent abv degree degrees nd rd th st month months up");
        Play(Role.With, "with");
        Play(Role.Determiner, "the your some any");
        Play(Role.Length, "inch inches cm mm centimetre centimetres centimeter centimeters");
        Play(Role.Up, "up off");
        Play(Role.Label, "garnish garnishes rim decoration");
        Play(Role.Plus, "plus");
        Play(Role.From, "from");
        Play(Role.Saying, "that's that’s thats that is which so it's it’s equals makes being ie aka");
        Play(Role.Over, "over");
        Play(Role.Filler, "um umm uhm uh uhh er erm hmm like okay ok so then roughly maybe just alright");
        Play(Role.Lead, "now well right let's let’s lets say we've we’ve we i i'll i’ll i'm i’m we'll we’ll we're we’re you you'll you’ll know got have need want use using add adding pour pouring take in with and plus here here's here’s from going go goes there's there’s");
        Play(Role.Quality, "fresh freshly good ripe organic unwaxed cold chilled finely thinly lightly gently fine whole pressed squeezed");

        void Play(Role role, string spellings) => Add(words, spellings, lexeme => lexeme with { Role = lexeme.Role | role });
    }
}
