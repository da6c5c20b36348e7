package culm.bench.learn;

import java.util.ArrayList;
import java.util.List;

import culm.blank.rules.Say;
import culm.geometry.words.Told;

/** What was learned, in sentences. */
public final class LearnedText {
    private LearnedText() {
    }

    /** The sentences, the most important first, lengths in mm; whose blanks they are about is not among them. */
    public static List<String> of(Learned l) {
        return told(l).stream().map(Told::mm).toList();
    }

    /** The same, their lengths as {@link Told} keeps them. */
    public static List<String> told(Learned l) {
        List<String> lines = new ArrayList<>();
        if (!l.change().isEmpty()) {
            lines.add(l.change());
        }
        if (!l.said()) {
            lines.add(l.refused());
            return lines;
        }
        lines.add("from " + l.lessons().size() + " blanks: " + (l.delta() < 0 ? "-" : "+") + Told.length(Math.abs(l.delta()), 3) + ", give or take " + Told.number(l.half(), 3)
                + "; that is " + Say.turns(Math.abs(l.turns())) + (l.turns() >= 0 ? " more" : " fewer") + " than the model says without it");
        lines.add("predictions of blanks that were held back were off by " + Say.turns(l.without()) + " without it, " + Say.tenth(l.with())
                + " with it; the next blank: give or take " + Say.tenth(l.next()));
        l.drift().ifPresent(d -> lines.add("It drifts: " + Say.turns(Math.abs(10 * d.perBlank() / l.perTurn())) + (d.perBlank() > 0 ? " more" : " fewer")
                + " in ten blanks. Look at the knife, the gouger, the soaking."));
        lines.add(l.worthIt() ? "Worth using." : "It cannot be told from none at all; not offered for use.");
        return lines;
    }
}
