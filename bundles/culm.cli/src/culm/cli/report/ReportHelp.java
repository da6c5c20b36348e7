package culm.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import culm.blank.Inputs;

/** What {@code culm report --help} says beyond its usage; the numbers come from their descriptions. */
final class ReportHelp {
    private ReportHelp() {
    }

    static String text() {
        StringBuilder out = new StringBuilder();
        out.append("""

                  FILE       a design, ending in .reed
                  --json     the same as JSON: lengths in mm from the bottom of the staple, volumes in mm³, turns as numbers;
                             what cannot be computed is null and a finding says why; marks that do not exist are left out
                  --spool M  how many blanks a spool of M metres is enough for; --tails MM is what each takes beside the turns, assumed 300
                  --out DIR  also writes length-stack.svg and cross-section.svg there

                Ends with 0: nothing is wrong (warnings allowed), 1: the blank will not work, 2: wrong usage, 3: unreadable input.

                Measure first:
                """);
        List<String[]> rows = new ArrayList<>();
        Inputs.all().forEach((path, p) -> {
            if (p.measureFirst()) {
                String assumed = p.optional() ? "may be absent" : String.format(Locale.ROOT, "assumed %.2f", p.standard());
                rows.add(new String[] {p.label(), assumed, p.help()});
            }
        });
        int label = rows.stream().mapToInt(r -> r[0].length()).max().orElse(0);
        int assumed = rows.stream().mapToInt(r -> r[1].length()).max().orElse(0);
        rows.forEach(r -> out.append(String.format("  %-" + label + "s  %-" + assumed + "s  %s%n", r[0], r[1], r[2]).replace("\r\n", "\n")));
        return out.append("\nAll numbers with their ranges: culm parameters\n").toString();
    }
}
