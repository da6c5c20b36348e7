package culm.workbench.internal.bench.log;

import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;

import culm.model.ModelPackage.Literals;

/**
 * One field of a blank in the log.
 *
 * @param words what it is called
 * @param help what to write, one sentence
 * @param kind how it is written
 * @param feature where it stands
 */
record LogField(String words, String help, Kind kind, EStructuralFeature feature) {
    /** How a field is written. */
    enum Kind {
        WORDS, DATE, LENGTH, TURNS, CHOICE, YES_NO, DESIGN
    }

    /** Fields that belong together. */
    record Group(String head, List<LogField> fields) {
    }

    /** What a new blank takes over from the one before: all that rarely changes from blank to blank. */
    static final List<EStructuralFeature> KEPT = List.of(Literals.LOG_ENTRY__TIED_BY, Literals.LOG_ENTRY__DESIGN, Literals.LOG_ENTRY__STAPLE_BATCH, Literals.LOG_ENTRY__GOUGE,
            Literals.LOG_ENTRY__CANE_BATCH, Literals.LOG_ENTRY__SHAPE, Literals.LOG_ENTRY__THREAD, Literals.LOG_ENTRY__WINDING, Literals.LOG_ENTRY__CANE_HELD,
            Literals.LOG_ENTRY__ENDS, Literals.LOG_ENTRY__WIRE, Literals.LOG_ENTRY__SEALING);

    static final Group BLANK = new Group("Blank", List.of(words("number", "The number on the blank.", Literals.LOG_ENTRY__NUMBER),
            new LogField("tied on", "The day, such as 2026-03-09 or 9.3.2026.", Kind.DATE, Literals.LOG_ENTRY__TIED_ON),
            words("tied by", "Who tied it.", Literals.LOG_ENTRY__TIED_BY), words("for", "Who it is for.", Literals.LOG_ENTRY__MADE_FOR)));

    static final Group FROM = new Group("Made from", List.of(new LogField("design", "The design it was tied from.", Kind.DESIGN, Literals.LOG_ENTRY__DESIGN),
            words("staple batch", "The file of the staple's batch, or words.", Literals.LOG_ENTRY__STAPLE_BATCH),
            words("staple", "What is written on the staple.", Literals.LOG_ENTRY__STAPLE), words("cane batch", "Where the cane comes from.", Literals.LOG_ENTRY__CANE_BATCH),
            words("gouge", "Which gouge.", Literals.LOG_ENTRY__GOUGE), words("shape", "Which shape.", Literals.LOG_ENTRY__SHAPE), words("thread", "Which thread.", Literals.LOG_ENTRY__THREAD)));

    static final Group HOW = new Group("Tied", List.of(new LogField("winding", "Which way the thread goes round, seen from the tip.", Kind.CHOICE, Literals.LOG_ENTRY__WINDING),
            words("cane held", "How the cane was held while tying.", Literals.LOG_ENTRY__CANE_HELD),
            new LogField("ends", "The ends of the cane.", Kind.CHOICE, Literals.LOG_ENTRY__ENDS), new LogField("wire", "Whether it has a wire.", Kind.YES_NO, Literals.LOG_ENTRY__WIRE),
            words("sealing", "What the sides were sealed with.", Literals.LOG_ENTRY__SEALING)));

    static final Group SEEN = new Group("Measured and seen", List.of(length("staple length", "This staple, bottom to top.", Literals.LOG_ENTRY__STAPLE_LENGTH),
            length("tie length", "After tying: bottom of the staple to the fold.", Literals.LOG_ENTRY__TIE_LENGTH),
            turns("turns, left side", "Turns left when the left side closed, seen with the fold up; below zero when it was still open at the top of the wrap.",
                    Literals.LOG_ENTRY__TURNS_LEFT_ON_LEFT),
            turns("turns, right side", "The same on the right.", Literals.LOG_ENTRY__TURNS_LEFT_ON_RIGHT),
            length("top of the wrap", "From the bottom of the staple.", Literals.LOG_ENTRY__WRAP_TOP),
            new LogField("leak, fold closed", "Leak test with the fold still closed.", Kind.CHOICE, Literals.LOG_ENTRY__LEAK_FOLDED),
            new LogField("straight", "Whether it looks straight.", Kind.YES_NO, Literals.LOG_ENTRY__STRAIGHT),
            new LogField("leak, tip cut", "Leak test after the tip is cut.", Kind.CHOICE, Literals.LOG_ENTRY__LEAK_CUT),
            length("finished length", "Bottom of the staple to the tip.", Literals.LOG_ENTRY__FINISHED_LENGTH),
            new LogField("keeper", "Whether it was kept.", Kind.YES_NO, Literals.LOG_ENTRY__KEEPER), words("remarks", "Anything else.", Literals.LOG_ENTRY__REMARKS)));

    private static LogField words(String words, String help, EStructuralFeature feature) {
        return new LogField(words, help, Kind.WORDS, feature);
    }

    private static LogField length(String words, String help, EStructuralFeature feature) {
        return new LogField(words, help, Kind.LENGTH, feature);
    }

    private static LogField turns(String words, String help, EStructuralFeature feature) {
        return new LogField(words, help, Kind.TURNS, feature);
    }
}
