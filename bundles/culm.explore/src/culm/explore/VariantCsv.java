package culm.explore;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import culm.explore.internal.run.Digits;

/**
 * Variants as CSV (RFC 4180, UTF-8, lines end in LF): a column for each axis, then sidesCloseAt, turnsLeft, openAtStapleTop, failed (ids of the rules that
 * fail, separated by spaces). Lengths mm with a point, at most six decimals; what does not exist is empty. Rows go straight to the stream.
 */
public final class VariantCsv implements VariantSink {
    private final Digits out;
    private List<Axis> axes;
    private List<String> rules;
    private String[] fails;

    /** @param stream not closed here */
    public VariantCsv(OutputStream stream) {
        out = new Digits(stream);
    }

    @Override
    public void begin(VariantHead head) throws IOException {
        axes = head.axes();
        rules = head.rules();
        fails = new String[1 << Math.min(16, rules.size())];
        for (Axis axis : axes) {
            out.text(cell(axis.id()));
            out.sign(',');
        }
        out.text("sidesCloseAt,turnsLeft,openAtStapleTop,failed\n");
    }

    @Override
    public void rows(VariantBlock block) throws IOException {
        for (int r = 0; r < block.rows(); r++) {
            for (int i = 0; i < axes.size(); i++) {
                value(axes.get(i), block.values()[i][r]);
                out.sign(',');
            }
            out.number(block.closesAt()[r]);
            out.sign(',');
            out.number(block.turnsLeft()[r]);
            out.sign(',');
            out.number(block.openAtTop()[r]);
            out.sign(',');
            out.text(failed(block.failed()[r]));
            out.sign('\n');
        }
        out.flush();
    }

    private void value(Axis axis, double value) throws IOException {
        if (axis instanceof Axis.Numbers) {
            out.number(value);
        } else if (!Double.isNaN(value)) {
            out.text(cell(axis.text((int) value)));
        }
    }

    private String failed(int bits) {
        if (bits >= fails.length) {
            return names(bits);
        }
        if (fails[bits] == null) {
            fails[bits] = names(bits);
        }
        return fails[bits];
    }

    private String names(int bits) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < rules.size(); i++) {
            if ((bits & 1 << i) != 0) {
                all.append(all.length() == 0 ? "" : " ").append(rules.get(i));
            }
        }
        return all.toString();
    }

    /** A text cell: quoted where CSV asks for it; one that begins like a formula gets an apostrophe, so that no spreadsheet runs it. */
    static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
