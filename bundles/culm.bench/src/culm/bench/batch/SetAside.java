package culm.bench.batch;

import culm.geometry.words.Told;

/** A staple that no setting serves. @param staple which one; @param told why, one sentence, its lengths as {@link Told} keeps them */
public record SetAside(StapleReadings staple, String told) {
    /** Why, one sentence, lengths in mm. */
    public String why() {
        return Told.mm(told);
    }
}
