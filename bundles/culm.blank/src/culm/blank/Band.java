package culm.blank;

/**
 * A 95 % give or take around a value.
 *
 * @param low        lower end; of turns left, where {@code open} is set, the lowest that can still be told
 * @param high       upper end; of a height, where {@code open} is set, the highest that can still be told
 * @param half       half of the width of the band; where one end is open, the distance to the other one
 * @param open       true when more than 2.5 % of such blanks do not close at all: one end lies beyond what can be told
 * @param never      share of such blanks that do not close at all, 0 to 1
 * @param propagated true when the band comes from propagated draws, because the first order was off by more than a tenth of them
 */
public record Band(double low, double high, double half, boolean open, double never, boolean propagated) {
}
