package culm.blank.export;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.rules.Finding;
import culm.geometry.guard.Budget;
import culm.geometry.guard.Guard;
import culm.geometry.guard.Guarded;

/** A plug-in's exporter behind its guard: whatever it throws becomes a {@link culm.geometry.GeometryException} that names it. */
public final class GuardedExporter implements Exporter, Guarded {
    private final Exporter exporter;
    private final Guard guard;
    private final String id;
    private final String name;
    private final String ending;

    /** @param exporter an exporter that has told its id and name before */
    public GuardedExporter(Exporter exporter, String plugIn) {
        this.exporter = exporter;
        this.id = exporter.id();
        this.name = exporter.name();
        this.ending = exporter.ending();
        this.guard = Guard.of("exporter", name, plugIn, Budget.RULES);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String ending() {
        return ending;
    }

    @Override
    public Guard guard() {
        return guard;
    }

    @Override
    public byte[] bytes(String title, Assessment assessment, List<Finding> findings) {
        return guard.call(() -> exporter.bytes(title, assessment, findings));
    }
}
