package culm.cli.parameters;

import java.util.List;

import culm.cli.parameters.Reference.Row;
import culm.cli.parameters.Reference.Section;

/** The reference as text for a terminal and as a page of the docs. */
final class ReferenceText {
    private ReferenceText() {
    }

    /** Aligned columns; the help of a number stands below it. */
    static String plain(List<Section> sections) {
        StringBuilder out = new StringBuilder();
        for (Section s : sections) {
            out.append(out.length() == 0 ? "" : "\n").append(s.title()).append(s.id().isEmpty() ? "" : " (" + s.id() + ")").append('\n');
            if (!s.help().isEmpty()) {
                out.append("  ").append(s.help()).append('\n');
            }
            int path = s.rows().stream().mapToInt(r -> r.path().length()).max().orElse(0);
            int label = s.rows().stream().mapToInt(r -> r.label().length()).max().orElse(0);
            for (Row r : s.rows()) {
                out.append("  ").append(pad(r.path(), path)).append("  ").append(pad(r.label(), label)).append("  ").append(r.range())
                        .append(r.unit().isEmpty() ? "" : " " + r.unit()).append(", assumed ").append(r.standard()).append('\n');
                out.append("      ").append(r.help()).append('\n');
            }
        }
        return out.toString();
    }

    /** A page in Markdown, one table a section. */
    static String markdown(List<Section> sections) {
        StringBuilder out = new StringBuilder("# Every number\n\n");
        out.append("Made by `culm parameters --markdown` from the descriptions that the forms and the range checks use. Lengths in mm.\n");
        for (Section s : sections) {
            out.append("\n## ").append(s.title()).append('\n');
            if (!s.help().isEmpty()) {
                out.append('\n').append(s.help()).append(" Type `").append(s.id()).append("`.\n");
            }
            out.append("\n| number | path | range | assumed | |\n| --- | --- | --- | --- | --- |\n");
            for (Row r : s.rows()) {
                out.append("| ").append(cell(r.label())).append(" | `").append(r.path()).append("` | ").append(r.range()).append(' ').append(r.unit())
                        .append(" | ").append(r.standard()).append(" | ").append(cell(r.help())).append(" |\n");
            }
        }
        return out.toString();
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
