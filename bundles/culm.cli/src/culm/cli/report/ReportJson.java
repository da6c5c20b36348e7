package culm.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.blank.Spool;
import culm.blank.Stretch;
import culm.blank.ThreadPath;
import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.blank.rules.Verdict;

/**
 * An assessment as JSON for other programs: lengths mm, volumes mm^3, turns as numbers, full precision. What cannot be computed is null, with
 * a finding that says why; marks that do not exist are left out.
 */
public final class ReportJson {
    private static final Gson GSON = new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create();

    private ReportJson() {
    }

    /** The text, ending with a line break. @param file the design's file as it was named, @param name the design's name; @param spool the thread there is, if that was asked */
    public static String text(String file, String name, Assessment a, List<Finding> findings, Optional<Spool> spool) {
        JsonObject o = json(file, name, a, findings);
        spool.ifPresent(s -> o.add("spool", a.thread().<JsonElement>map(t -> spool(s, t)).orElse(JsonNull.INSTANCE)));
        return GSON.toJson(o) + "\n";
    }

    private static JsonObject spool(Spool spool, ThreadPath thread) {
        JsonObject o = new JsonObject();
        int blanks = spool.blanks(thread);
        o.addProperty("length", spool.length());
        o.addProperty("perBlank", spool.perBlank(thread));
        o.addProperty("blanks", blanks);
        o.addProperty("left", spool.left(thread, blanks));
        return o;
    }

    static JsonObject json(String file, String name, Assessment a, List<Finding> findings) {
        Verdict verdict = Verdict.of(a, findings);
        JsonObject o = new JsonObject();
        o.addProperty("file", file);
        o.addProperty("name", name);
        o.addProperty("verdict", verdict.sentence());
        o.addProperty("sign", verdict.sign().name());
        o.addProperty("fitted", a.fitted());
        o.add("sidesCloseAt", number(a.sidesCloseAt()));
        o.add("sidesCloseBand", band(a.closeBand()));
        o.add("turnsLeft", number(a.turnsLeft()));
        o.add("turnsLeftBand", band(a.turnsBand()));
        o.add("openAtStapleTop", number(a.openAtStapleTop()));
        o.add("openAtStapleTopBand", band(a.openAtStapleTopBand()));
        o.add("openAtWrapTop", number(a.openAtWrapTop()));
        o.add("tieLengthPerTurn", number(a.tieLengthPerTurn()));
        o.add("caneOnStaple", number(a.caneOnStaple()));
        o.add("caneAboveStaple", number(OptionalDouble.of(a.caneAboveStaple())));
        o.add("left", number(a.left().at()));
        o.add("right", number(a.right().at()));
        JsonArray closed = new JsonArray();
        for (Stretch s : a.closing().closed()) {
            JsonArray ends = new JsonArray();
            ends.add(s.from());
            ends.add(s.to());
            closed.add(ends);
        }
        o.add("closed", closed);
        JsonObject heights = new JsonObject();
        a.heights().all().forEach((mark, z) -> heights.addProperty(mark.id(), z));
        o.add("heights", heights);
        o.add("thread", thread(a.thread()));
        o.add("boreVolume", number(a.boreVolume()));
        JsonArray list = new JsonArray();
        findings.forEach(f -> list.add(finding(f)));
        o.add("findings", list);
        return o;
    }

    private static JsonElement thread(Optional<ThreadPath> path) {
        if (path.isEmpty()) {
            return JsonNull.INSTANCE;
        }
        JsonObject o = new JsonObject();
        o.addProperty("turnsUp", path.get().turnsUp());
        o.addProperty("turnsDown", path.get().turnsDown());
        o.addProperty("length", path.get().length());
        return o;
    }

    private static JsonObject finding(Finding f) {
        JsonObject o = new JsonObject();
        o.addProperty("rule", f.rule());
        o.addProperty("severity", f.severity().name().toLowerCase(java.util.Locale.ROOT));
        o.addProperty("text", f.text());
        o.add("value", number(f.value()));
        o.add("limit", number(f.limit()));
        o.addProperty("why", f.why());
        o.addProperty("remedy", f.remedy());
        o.addProperty("input", f.path());
        f.fix().ifPresent(fix -> o.add("fix", fix(fix)));
        return o;
    }

    private static JsonObject fix(Fix fix) {
        JsonObject o = new JsonObject();
        o.addProperty("input", fix.path());
        o.addProperty("value", fix.value());
        o.addProperty("text", fix.text());
        return o;
    }

    private static JsonElement band(Optional<Band> band) {
        if (band.isEmpty()) {
            return JsonNull.INSTANCE;
        }
        JsonObject o = new JsonObject();
        o.addProperty("low", band.get().low());
        o.addProperty("high", band.get().high());
        o.addProperty("giveOrTake", band.get().half());
        o.addProperty("mayNotClose", band.get().open());
        return o;
    }

    private static JsonElement number(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? new JsonPrimitive(value.getAsDouble()) : JsonNull.INSTANCE;
    }
}
