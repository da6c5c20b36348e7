package culm.bench.card;

/**
 * What stands at the head of a card. Anything left empty becomes a line to write on.
 *
 * @param design      the design's name
 * @param madeFor     who the reed is for
 * @param instrument  such as oboe
 * @param blankNumber the number that goes on the blank
 * @param staple      which staple, or which ones
 * @param caneBatch   where the cane comes from
 * @param shape       which shape
 * @param thread      which thread
 * @param ends        how the ends of the cane are: plain, thinned or bevelled
 */
public record CardHead(String design, String madeFor, String instrument, String blankNumber, String staple, String caneBatch, String shape, String thread,
        String ends) {
    /** Only the design's name is known. */
    public static CardHead of(String design) {
        return new CardHead(design, "", "", "", "", "", "", "", "");
    }

    /** The same for another staple. */
    public CardHead withStaple(String other) {
        return new CardHead(design, madeFor, instrument, blankNumber, other, caneBatch, shape, thread, ends);
    }

    /** The same with another number. */
    public CardHead withNumber(String number) {
        return new CardHead(design, madeFor, instrument, number, staple, caneBatch, shape, thread, ends);
    }
}
