package culm.design.compare;

import java.util.List;
import java.util.Map;

import culm.geometry.profile.Profiles;
import culm.model.Document;

/**
 * Three versions of one document compared: what both started from, yours, theirs. A value with its give or take is one thing; rows, parts and
 * entries are told apart by their ids, so that two people who each add one keep both.
 */
public final class ThreeWay {
    private final Document before;
    private final Document yours;
    private final Document theirs;
    private final Telling telling;
    private final List<Difference> differences;

    private ThreeWay(Document before, Document yours, Document theirs, Profiles profiles) {
        this.before = before;
        this.yours = yours;
        this.theirs = theirs;
        this.telling = new Telling(profiles);
        MergeRun run = new MergeRun(telling, Map.of());
        run.document(before, yours, theirs);
        this.differences = List.copyOf(run.differences());
    }

    /**
     * Compares; the documents are not changed.
     *
     * @param before   what both started from; null when that is not known, so that everything in which they differ is a conflict
     * @param yours    your version
     * @param theirs   the others' version, of the same kind
     * @param profiles the types that are known, for the words of their numbers
     */
    public static ThreeWay compare(Document before, Document yours, Document theirs, Profiles profiles) {
        if (yours.eClass() != theirs.eClass() || before != null && before.eClass() != yours.eClass()) {
            throw new IllegalArgumentException("only files of one kind can be compared");
        }
        return new ThreeWay(before, yours, theirs, profiles);
    }

    /** What changed from one version to another: each difference has what was before, and yours for what is now. */
    public static List<Difference> changes(Document before, Document now, Profiles profiles) {
        return compare(before, now, before, profiles).differences();
    }

    /** Everything that you or the others changed, in the order of the file. */
    public List<Difference> differences() {
        return differences;
    }

    /** What both changed, differently. */
    public List<Difference> conflicts() {
        return differences.stream().filter(d -> d.side() == Side.CONFLICT).toList();
    }

    /**
     * Both versions put together: what one of you changed is taken, and where you both did, what was chosen.
     *
     * @param choices by path, for conflicts and for anything else that shall not be as it would; a conflict without a choice keeps yours
     * @return a new document
     */
    public Document merged(Map<String, Choice> choices) {
        return new MergeRun(telling, choices).document(before, yours, theirs);
    }
}
