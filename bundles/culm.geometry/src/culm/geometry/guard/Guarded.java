package culm.geometry.guard;

/** Something of a plug-in's that is called through a {@link Guard}. */
public interface Guarded {
    /** Its guard. */
    Guard guard();
}
