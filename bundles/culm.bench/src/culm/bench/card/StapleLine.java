package culm.bench.card;

/**
 * One staple on a card for several.
 *
 * @param staple     its label
 * @param tie        tie length of its setting, mm
 * @param pencilMark cane above the staple, mm
 * @param wrapTop    top of the wrap from the bottom of this staple, mm
 * @param turnsLeft  turns left that the model expects
 */
public record StapleLine(String staple, double tie, double pencilMark, double wrapTop, double turnsLeft) {
}
