namespace EditionRegister.UseCases.Demo;

/// <summary>The time of the scenario: it stands where the story has it, and moves a minute with every look.</summary>
internal sealed class ScenarioClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 1, 5, 9, 0, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow()
    {
        var now = _now;
        _now = _now.AddMinutes(1);

        return now;
    }

    /// <summary>On to a later day of the story, nine in the morning.</summary>
    public void OnTo(int year, int month, int day) => _now = new DateTimeOffset(year, month, day, 9, 0, 0, TimeSpan.Zero);
}
