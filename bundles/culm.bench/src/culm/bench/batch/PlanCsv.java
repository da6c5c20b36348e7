package culm.bench.batch;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import culm.bench.csv.CsvStyle;
import culm.bench.csv.CsvWriter;

/** A split batch as CSV: one row for each staple, in the order of the settings, then those set aside. */
public final class PlanCsv {
    private PlanCsv() {
    }

    /** Writes a plan with its columns explained. */
    public static String write(BatchPlan plan, CsvStyle style) {
        Map<String, String> doubts = plan.doubts().stream().collect(Collectors.groupingBy(d -> d.staple().label(), Collectors.mapping(Doubt::why, Collectors.joining(" "))));
        CsvWriter csv = new CsvWriter(style);
        csv.remark("batch: " + plan.batch().name()).remark("All lengths in mm. Setting = tie length, bottom of the staple to the fold.")
                .remark("pencil mark = cane above the staple, from the fold. wrap top = from the bottom of this staple.")
                .remark("turns left = turns that the model expects under the top of the wrap when the sides close.");
        List.of("setting", "staple", "length", "top wide", "top narrow", "tie length", "pencil mark", "wrap top", "turns left", "allowed from", "allowed to", "remarks").forEach(csv::text);
        csv.end();
        int number = 0;
        for (Setting setting : plan.settings()) {
            number++;
            for (Served s : setting.staples()) {
                TieRange range = s.ties().ranges().stream().filter(r -> setting.tie() >= r.low() - 1e-9 && setting.tie() <= r.high() + 1e-9).findFirst().orElseThrow();
                csv.number(number, 0).text(s.staple().label());
                readings(csv, s.staple());
                csv.number(setting.tie(), 1).number(s.caneAbove(), 1).number(s.wrapTop(), 1).number(s.turnsLeft(), 1).number(range.low(), 1).number(range.high(), 1)
                        .text(doubts.getOrDefault(s.staple().label(), "")).end();
            }
        }
        for (SetAside aside : plan.aside()) {
            csv.text("set aside").text(aside.staple().label());
            readings(csv, aside.staple());
            for (int i = 0; i < 6; i++) {
                csv.text("");
            }
            csv.text((aside.why() + " " + doubts.getOrDefault(aside.staple().label(), "")).strip()).end();
        }
        return csv.text();
    }

    private static void readings(CsvWriter csv, StapleReadings staple) {
        for (Dimension d : Dimension.values()) {
            csv.number(staple.middle(d).orElse(Double.NaN), 2);
        }
    }
}
