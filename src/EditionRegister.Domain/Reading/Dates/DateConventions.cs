namespace EditionRegister.Domain.Reading.Dates;

/// <summary>
/// What the words of a date mean in years: every convention once, with its reason. Museums differ in nearly all of these; the text as written always
/// stays beside what is read. Common practice, no source, where none is named. Fixed before the first measurement; changed after it were these: c. before
/// a span (widened by five before), the year in the middle of two parts (in the second only), 1800s (the decade), and 1904-05 (the span).
/// </summary>
public static class DateConventions
{
    /// <summary>About means so many years to either side of a year that stands alone.</summary>
    public const int AboutYears = 5;

    /// <summary>Before 1645 begins, and after 1560 ends, so many years away.</summary>
    public const int OpenYears = 25;

    /// <summary>The 19th century is 1800 to 1899; a strict count would begin in 1801.</summary>
    public const int FirstYearOfCentury = 0;

    /// <summary>28 Jan 86 is of the twentieth century, and always marked as not sure.</summary>
    public const int CenturyOfTwoFigures = 1900;

    /// <summary>Four figures by themselves are a year from here on; before, an era must stand with it, or a span.</summary>
    public const int FirstPlainYear = 1000;

    /// <summary>Four figures beyond are a price or a shelf mark.</summary>
    public const int LastPlainYear = 2199;

    // The sources by name: cataloguing rules that are published. They were met after the first measurement, and named where they agree or differ.
    private const string Cco = "Cataloging Cultural Objects 4.2.3.2 (ca. 1610: 1605 to 1615)";
    private const string Reno = "University of Nevada, Reno, dates of digital collections, 2009 and 2012 (contentdm.library.unr.edu/digitalprojects/CONTENTdmDates.html)";
    private const string SanDiego = "UC San Diego, visual resources, dates (tpot.ucsd.edu/description/visual-resources/dates.html)";

    /// <summary>The table. A test reads every line of it.</summary>
    public static IReadOnlyList<DateConvention> All { get; } =
    [
        new("c. 1926", "about 1926: 1921 to 1931", $"{Cco}; {Reno}; {SanDiego}. Object ID says ten years; museums have none, one, five, ten, fifteen and twenty-five, and five most often."),
        new("1926~", "about 1926: 1921 to 1931", "The same said in EDTF. ? alone doubts a year and does not widen it; % does both."),
        new("c. 1835-1842", "about 1835 to 1842", $"A span says by itself how wide it is: {Reno} and {SanDiego} keep the years given. So do most of the museums, and what is read stays the same when its EDTF is read again."),
        new("1776–c. 1790", "1776 to about 1790", "As above: only a year that stands alone is widened."),
        new("about 1975, 1976", "about 1975 to 1976", "As above: two years listed are a span."),
        new("c. 1920s", "about the 1920s: 1920 to 1929", $"As above; {Reno} too keeps the decade."),
        new("about March 1926", "about March 1926", "As above: whoever knows the month does not mean ten years."),
        new("607", "AD 607", "Three figures are a year only where nothing else is written, or in a span such as 265-589, or with an era."),
        new("1960s", "the 1960s: 1960 to 1969", "As everybody counts."),
        new("1800s", "1800s: the 19th century, 1800 to 1899; the decade may be meant", "1800s is mostly the century and 1900s as often the decade; the century holds both, and the doubt is said."),
        new("19th century", "the 19th century: 1800 to 1899", $"{SanDiego}, and most museums; some count from 1801."),
        new("1st century", "AD 1 to AD 99", "There is no year nought."),
        new("3rd-1st century B.C", "300 BC to 1 BC", "The word and the era behind the second go for both."),
        new("early 20th century", "about 1900 to 1950", "The first half. The year in the middle belongs to both halves, since some count a century from 1800 and some from 1801. San Diego takes a quarter, CCO has late from the half on."),
        new("late 1860s", "about 1865 to 1869", "The last half."),
        new("mid 17th c.", "about 1625 to 1675", "The middle half: early, mid and late together leave no gap."),
        new("mid- to late-19th century", "about 1825 to 1899", "From where the first part begins to where the second ends."),
        new("before 1645", "1645 or earlier", "Open: no first day is kept. Where a first year is needed it is twenty-five years before, the middle of what museums put; Object ID allows a hundred."),
        new("no earlier than 1888", "1888 or later", "Open likewise, to twenty-five years after. Not before, since, post and or later are the same."),
        new("before 1955-1956", "1956 or earlier", "Before a span ends with it, after a span begins with it."),
        new("18th century, after 1713", "1713 to 1799", "A bound beside a date narrows it, if they meet."),
        new("Edo period (1603-1867), 19th century", "1800 to 1867", "So does a date in brackets; where they do not meet it stands beside."),
        new("1828, 1843", "1828 to 1843", "Dates listed are covered, from the first to the last; so too 1967/1971, and 1879 and 1887."),
        new("1935, printed 1977", "1935; printed 1977", "The date is the image's; what came later, or before, stands beside it with its own word."),
        new("negative 1950; printed 1981", "negative 1950; printed 1981", "What made the image comes before what was made of it; else the first that is said."),
        new("Replica of 1836 original", "no date of its own; original 1836", "An original's date is not the date of what was made after it."),
        new("winter 1994", "winter 1994: December 1994 to February 1995", "The seasons of the north, as the register has them everywhere."),
        new("17.2.1877", "17 February 1877", "Dots are written where the day comes first."),
        new("9/10/2005", "9/10/2005: the year 2005; which is the month is not sure", "Slashes are written in both orders. 3/13/1929 can only be the 13th of March."),
        new("28 Jan 86", "28 Jan 86: possibly 28 January 1986; the century is not written", "Never without a doubt. Figures alone are not read: 5/11 may be the fifth sheet of eleven."),
        new("1904-05", "1904-05: May 1904; the years 1904 to 1905 are written the same", "EDTF comes first, since the register writes it everywhere; the doubt is said. 1904–05 with a long dash, c. 1904-05 and 1904-5 are years."),
        new("[197-?]", "possibly the 1970s: 1970 to 1979", "Library cataloguing: Anglo-American Cataloguing Rules 1.4F7, from memory; Rules for Archival Description (publish.uwo.ca/~dspanner/rule2.htm)."),
        new("+/- 5 (1950)", "1945 to 1955", "The width that is said."),
    ];

    /// <summary>Parts are counted in quarters.</summary>
    internal const int Parts = 4;

    internal static (int From, int To) Early { get; } = (0, 2);

    internal static (int From, int To) Mid { get; } = (1, 3);

    internal static (int From, int To) Late { get; } = (2, 4);
}
