package culm.cli.bench;

import culm.bench.learn.Learned;
import culm.bench.learn.LearnedText;

/** What was learned, for a person. */
final class LearnText {
    private LearnText() {
    }

    static String text(Learned l) {
        StringBuilder out = new StringBuilder(l.group().text()).append('\n');
        LearnedText.of(l).forEach(line -> out.append("  ").append(line).append('\n'));
        return out.append('\n').toString();
    }
}
