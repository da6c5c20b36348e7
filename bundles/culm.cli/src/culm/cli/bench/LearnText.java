package culm.cli.bench;

import java.util.Locale;

import culm.bench.learn.Learned;
import culm.blank.rules.Say;

/** What was learned, for a person. */
final class LearnText {
    private LearnText() {
    }

    static String text(Learned l) {
        StringBuilder out = new StringBuilder(l.group().text()).append('\n');
        if (!l.change().isEmpty()) {
            out.append("  ").append(l.change()).append('\n');
        }
        if (!l.said()) {
            return out.append("  ").append(l.refused()).append("\n\n").toString();
        }
        out.append(String.format(Locale.ROOT, "  from %d blanks: %+.3f mm, give or take %.3f; that is %s %s than the model says without it%n", l.lessons().size(), l.delta(), l.half(),
                Say.turns(Math.abs(l.turns())), l.turns() >= 0 ? "more" : "fewer").replace("\r\n", "\n"));
        out.append("  predictions of blanks that were held back were off by ").append(Say.turns(l.without())).append(" without it, ").append(Say.tenth(l.with()))
                .append(" with it; the next blank: give or take ").append(Say.tenth(l.next())).append('\n');
        l.drift().ifPresent(d -> out.append("  It drifts: ").append(Say.turns(Math.abs(10 * d.perBlank() / l.perTurn()))).append(d.perBlank() > 0 ? " more" : " fewer")
                .append(" in ten blanks. Look at the knife, the gouger, the soaking.\n"));
        out.append(l.worthIt() ? "  Worth using.\n" : "  It cannot be told from none at all; not offered for use.\n");
        return out.append('\n').toString();
    }
}
