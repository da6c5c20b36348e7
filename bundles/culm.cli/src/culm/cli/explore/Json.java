package culm.cli.explore;

import java.util.List;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import culm.explore.Cause;
import culm.explore.Chosen;
import culm.explore.Distribution;
import culm.explore.Effect;
import culm.explore.RuleShare;
import culm.explore.Sensitivities;
import culm.explore.Share;
import culm.explore.ToleranceResult;
import culm.explore.TwoWayMap;

/** What exploring found, as JSON: lengths mm, shares 0 to 1; what does not exist is null. */
final class Json {
    private static final Gson GSON = new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create();
    private static final double[] PERCENTILES = {1, 5, 25, 50, 75, 95, 99};
    private static final double BIN = 0.25;

    private Json() {
    }

    static String text(JsonElement element) {
        return GSON.toJson(element) + "\n";
    }

    static JsonObject tolerances(ToleranceResult r) {
        JsonObject o = new JsonObject();
        o.addProperty("blanks", r.blanks());
        o.addProperty("wanted", r.wanted());
        o.addProperty("seed", r.seed());
        o.add("passed", share(r.passed()));
        JsonArray rules = new JsonArray();
        for (RuleShare rule : r.rules()) {
            JsonObject one = new JsonObject();
            one.addProperty("rule", rule.id());
            one.addProperty("name", rule.name());
            one.add("passed", share(rule.passed()));
            one.add("causes", causes(rule.causes()));
            rules.add(one);
        }
        o.add("rules", rules);
        o.add("causes", causes(r.causes()));
        o.add("turnsLeft", distribution(r.turns()));
        o.add("sidesCloseAt", distribution(r.closes()));
        o.addProperty("never", r.never());
        o.addProperty("notComputed", r.refused());
        o.addProperty("byReferencePath", r.reference());
        JsonArray slow = new JsonArray();
        r.slowRules().forEach(slow::add);
        o.add("judgedOneByOne", slow);
        return o;
    }

    private static JsonObject share(Share s) {
        JsonObject o = new JsonObject();
        o.add("share", number(s.value()));
        o.addProperty("low", s.low());
        o.addProperty("high", s.high());
        o.addProperty("blanks", s.hits());
        return o;
    }

    private static JsonArray causes(List<Cause> causes) {
        JsonArray all = new JsonArray();
        for (Cause c : causes) {
            JsonObject o = new JsonObject();
            o.addProperty("input", c.path());
            o.addProperty("label", c.label());
            o.addProperty("failWhereLow", c.low().value());
            o.addProperty("failInTheMiddle", c.middle().value());
            o.addProperty("failWhereHigh", c.high().value());
            o.addProperty("certain", c.certain());
            all.add(o);
        }
        return all;
    }

    private static JsonObject distribution(Distribution d) {
        JsonObject o = new JsonObject();
        o.add("mean", number(d.mean()));
        o.add("standardDeviation", number(d.deviation()));
        JsonObject percentiles = new JsonObject();
        for (double p : PERCENTILES) {
            percentiles.add(Integer.toString((int) p), number(d.percentile(p)));
        }
        o.add("percentiles", percentiles);
        Distribution.Histogram h = d.histogram(BIN);
        JsonObject histogram = new JsonObject();
        histogram.addProperty("from", h.from());
        histogram.addProperty("width", h.width());
        JsonArray counts = new JsonArray();
        for (long c : h.counts()) {
            counts.add(c);
        }
        histogram.add("counts", counts);
        o.add("histogram", histogram);
        return o;
    }

    static JsonObject matters(Sensitivities s) {
        JsonObject o = new JsonObject();
        JsonArray all = new JsonArray();
        for (Effect e : s.effects()) {
            JsonObject one = new JsonObject();
            one.addProperty("input", e.path());
            one.addProperty("label", e.label());
            one.addProperty("unit", e.unit());
            one.addProperty("value", e.value());
            one.addProperty("giveOrTake", e.plusMinus());
            one.addProperty("measured", e.measured());
            one.addProperty("turnsPerHundredth", e.perHundredth());
            one.addProperty("turnsPerGiveOrTake", e.perTolerance());
            one.addProperty("shareOfVariance", e.share());
            all.add(one);
        }
        o.add("inputs", all);
        o.add("measureBetter", s.advice().<JsonElement>map(e -> new JsonPrimitive(e.path())).orElse(JsonNull.INSTANCE));
        o.add("why", s.why().isEmpty() ? JsonNull.INSTANCE : new JsonPrimitive(s.why()));
        return o;
    }

    static JsonObject chosen(Chosen c, List<String> inputs) {
        JsonObject o = new JsonObject();
        JsonObject values = new JsonObject();
        for (int i = 0; i < inputs.size(); i++) {
            values.addProperty(inputs.get(i), c.texts().get(i));
        }
        o.add("choice", values);
        o.addProperty("gain", c.gain());
        o.addProperty("gainLow", c.gainLow());
        o.addProperty("gainHigh", c.gainHigh());
        o.addProperty("certain", c.certain());
        o.addProperty("everyCombinationTried", c.every());
        o.addProperty("tried", c.tried());
        o.add("baseline", tolerances(c.baseline()));
        o.add("best", tolerances(c.best()));
        return o;
    }

    static JsonObject map(TwoWayMap m) {
        JsonObject o = new JsonObject();
        o.add("x", axis(m.x().id(), m.x().values()));
        o.add("y", axis(m.y().id(), m.y().values()));
        JsonArray regions = new JsonArray();
        for (TwoWayMap.Region r : m.regions()) {
            JsonObject one = new JsonObject();
            one.add("failed", strings(r.failed()));
            one.addProperty("crossings", r.cells());
            one.addProperty("labelX", m.x().values()[r.labelX()]);
            one.addProperty("labelY", m.y().values()[r.labelY()]);
            one.add("bounds", strings(r.bounds()));
            regions.add(one);
        }
        o.add("regions", regions);
        o.add("turnsLeft", rows(m.turns()));
        o.add("sidesCloseAt", rows(m.closes()));
        return o;
    }

    private static JsonObject axis(String id, double[] values) {
        JsonObject o = new JsonObject();
        o.addProperty("input", id);
        o.add("values", row(values));
        return o;
    }

    private static JsonArray rows(double[][] cells) {
        JsonArray all = new JsonArray();
        for (double[] cell : cells) {
            all.add(row(cell));
        }
        return all;
    }

    private static JsonArray row(double[] values) {
        JsonArray all = new JsonArray();
        for (double v : values) {
            all.add(number(v));
        }
        return all;
    }

    private static JsonArray strings(List<String> words) {
        JsonArray all = new JsonArray();
        words.forEach(all::add);
        return all;
    }

    private static JsonElement number(double value) {
        return Double.isFinite(value) ? new JsonPrimitive(value) : JsonNull.INSTANCE;
    }
}
