package culm.blank;

/** A stretch of heights, mm, from &lt;= to. */
public record Stretch(double from, double to) {
}
