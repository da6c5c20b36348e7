package culm.blank.solve;

/**
 * What ends an allowed stretch, or stands against a blank.
 *
 * @param rule id of the rule ({@code myLimits} for the house's own ends, {@code parts} where the parts allow no more)
 * @param text one sentence for the bench
 */
public record Bound(String rule, String text) {
    /** Rule id of the ends that the house set. */
    public static final String MY_LIMITS = "myLimits";
    /** Rule id of the ends that the parts set. */
    public static final String PARTS = "parts";
}
