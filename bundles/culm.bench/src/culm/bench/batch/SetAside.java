package culm.bench.batch;

/** A staple that no setting serves, and why, one sentence. */
public record SetAside(StapleReadings staple, String why) {
}
