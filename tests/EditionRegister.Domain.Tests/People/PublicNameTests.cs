using EditionRegister.Domain.People;

namespace EditionRegister.Domain.Tests.People;

// Invented names. Which shape a name is abbreviated to: common practice, no source.
public class PublicNameTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("Mara Ostholm", "Ostholm, Mara", "Mara Ostholm", "Mara", "Mara O.", "M. O.")]
    [InlineData("Anna Lene Tarvik", "Tarvik, Anna Lene", "Anna Lene Tarvik", "Anna Lene", "Anna Lene T.", "A. L. T.")]
    [InlineData("Anna-Lene Tarvik", "Tarvik, Anna-Lene", "Anna-Lene Tarvik", "Anna-Lene", "Anna-Lene T.", "A. T.")]
    [InlineData("Joris van der Wold", "van der Wold, Joris", "Joris van der Wold", "Joris", "Joris W.", "J. W.")]
    [InlineData("Joris van der Wold", "Wold, Joris van der", "Joris van der Wold", "Joris", "Joris W.", "J. W.")]
    [InlineData("Élodie Ördek", "Ördek, Élodie", "Élodie Ördek", "Élodie", "Élodie Ö.", "É. Ö.")]
    [InlineData("E\u0301lodie Narval", "Narval, E\u0301lodie", "E\u0301lodie Narval", "E\u0301lodie", "E\u0301lodie N.", "E\u0301. N.")]
    [InlineData("İpek Irmaklı", "Irmaklı, İpek", "İpek Irmaklı", "İpek", "İpek I.", "İ. I.")]
    [InlineData("Inez Brandt-Lovell", "Brandt-Lovell, Inez", "Inez Brandt-Lovell", "Inez", "Inez B.", "I. B.")]
    [InlineData("Rosa Vidal Mar", "Vidal Mar, Rosa", "Rosa Vidal Mar", "Rosa", "Rosa V.", "R. V.")]
    [InlineData("Tom Hale Jr.", "Hale, Tom, Jr.", "Tom Hale Jr.", "Tom", "Tom H.", "T. H.")]
    [InlineData("bela quill", "quill, bela", "bela quill", "bela", "bela q.", "b. q.")]
    [InlineData("Нина Озерова", "Озерова, Нина", "Нина Озерова", "Нина", "Нина О.", "Н. О.")]
    public void A_name_shows_as_much_as_its_policy_says(string name, string sortName, string full, string given, string givenAndInitial, string initials)
    {
        Assert.Equal(full, PublicName.Of(name, sortName, PublicNamePolicy.Full));
        Assert.Equal(given, PublicName.Of(name, sortName, PublicNamePolicy.Given));
        Assert.Equal(givenAndInitial, PublicName.Of(name, sortName, PublicNamePolicy.GivenAndInitial));
        Assert.Equal(initials, PublicName.Of(name, sortName, PublicNamePolicy.Initials));
    }

    // A first character is the whole family name here, so an initial would tell it.
    [Theory]
    [InlineData("山川花緒", "山川, 花緒", "花緒")]
    [InlineData("山川花緒", "山川、花緒", "花緒")]
    [InlineData("王芳蘭", "王，芳蘭", "芳蘭")]
    [InlineData("김누리", "김, 누리", "누리")]
    public void A_name_in_a_script_without_initials_shows_its_given_part_or_nothing(string name, string sortName, string given)
    {
        Assert.Equal(given, PublicName.Of(name, sortName, PublicNamePolicy.Given));
        Assert.Equal(given, PublicName.Of(name, sortName, PublicNamePolicy.GivenAndInitial));
        Assert.Equal("Unnamed pupil", PublicName.Of(name, sortName, PublicNamePolicy.Initials, isProtected: true));
        Assert.Equal("7b-12", PublicName.Of(name, sortName, PublicNamePolicy.Initials, classCode: "7b-12", isProtected: true));
    }

    [Theory]
    [InlineData("Sundar", "Sundar")]
    [InlineData("Sundar", null)]
    [InlineData("Sundar", ", Sundar")]
    [InlineData("Sundar", "Sundar,")]
    public void A_single_name_is_never_shown_as_the_given_part_of_itself(string name, string? sortName)
    {
        Assert.Equal("S.", PublicName.Of(name, sortName, PublicNamePolicy.Given));
        Assert.Equal("S.", PublicName.Of(name, sortName, PublicNamePolicy.GivenAndInitial));
        Assert.Equal("S.", PublicName.Of(name, sortName, PublicNamePolicy.Initials));
        Assert.Equal("Sundar", PublicName.Of(name, sortName, PublicNamePolicy.Full));
    }

    [Theory]
    [InlineData("Mara Ostholm", null, "given", "M. O.")]
    [InlineData("Mara Ostholm", "Mara Ostholm", "given-and-initial", "M. O.")]
    [InlineData("Joris van der Wold", "", "given", "J. W.")]
    [InlineData("山川花緒", null, "given", "private collection")]
    [InlineData("Kei O", "O, Kei", "given-and-initial", "Kei")]
    [InlineData("K O", "O, K", "given-and-initial", "K")]
    [InlineData("K O", "O, K", "initials", "private collection")]
    [InlineData("Anna Lene Tarvik", "Tarvik, Lene Tarvik", "given", "A. L. T.")]
    [InlineData("Mara Ostholm", "x, Mara Ostholm", "given", "M. O. x.")]
    [InlineData("", null, "full", "private collection")]
    [InlineData("", null, "initials", "private collection")]
    [InlineData("Mara Ostholm", "Ostholm, Mara", "class-code", "private collection")]
    [InlineData("Mara Ostholm", "Ostholm, Mara", "wording", "private collection")]
    public void Where_something_is_missing_more_is_kept_private(string name, string? sortName, string word, string shown)
    {
        Assert.True(PublicNamePolicy.TryFind(word, out var policy));

        Assert.Equal(shown, PublicName.Of(name, sortName, policy));
    }

    [Fact]
    public void The_unnamed_are_called_what_they_are()
    {
        Assert.Equal("Unnamed pupil", PublicName.Of("Mara Ostholm", "Ostholm, Mara", PublicNamePolicy.Unnamed, "7b-12", "a pupil", isProtected: true));
        Assert.Equal("private collection", PublicName.Of("Mara Ostholm", "Ostholm, Mara", PublicNamePolicy.Unnamed, "7b-12", "a friend"));
    }

    [Fact]
    public void A_class_code_and_a_wording_are_shown_as_they_stand()
    {
        Assert.Equal("7b-12", PublicName.Of("Mara Ostholm", "Ostholm, Mara", PublicNamePolicy.ClassCode, classCode: " 7b-12 ", isProtected: true));
        Assert.Equal("a friend of the studio", PublicName.Of("Mara Ostholm", "Ostholm, Mara", PublicNamePolicy.Wording, wording: "a friend of the studio"));
        Assert.Equal("Unnamed pupil", PublicName.Of("Mara Ostholm", "Ostholm, Mara", PublicNamePolicy.Wording, wording: "  ", isProtected: true));
    }

    [Fact]
    public void An_organisation_always_shows_its_name()
    {
        Assert.All(PublicNamePolicy.All, policy => Assert.Equal(
            "Harbour Street School",
            PublicName.Of("Harbour Street School", null, policy, classCode: "7b", wording: "a school", isOrganisation: true)));
    }

    [Fact]
    public void No_policy_but_full_ever_shows_the_whole_name()
    {
        var shapes = from name in new[] { "Mara Ostholm", "Sundar", "Kei O", "O", "山川花緒", "김누리", "bela quill", "van", "Joris van der Wold" }
                     from sortName in new[] { null, "", name, $"{name},", $", {name}", $"{name}, {name}", "Ostholm, Mara", "O, Kei", "Kei, O" }
                     from policy in PublicNamePolicy.All
                     where policy != PublicNamePolicy.Full
                     select (name, shown: PublicName.Of(name, sortName, policy));

        Assert.All(shapes, shape => Assert.DoesNotContain(shape.name + " ", shape.shown.TrimEnd('.') + " ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_words_are_permanent()
    {
        Assert.Equal(["full", "given", "given-and-initial", "initials", "class-code", "unnamed", "wording"], PublicNamePolicy.All.Select(policy => policy.Word));
        Assert.False(PublicNamePolicy.TryFind("Full", out _));
        Assert.False(PublicNamePolicy.TryFind(null, out _));
    }
}

public sealed class PublicNameInGermanTests() : PublicNameTests("de-DE");

public sealed class PublicNameInTurkishTests() : PublicNameTests("tr-TR");
