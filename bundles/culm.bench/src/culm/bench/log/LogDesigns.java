package culm.bench.log;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import culm.bench.batch.BatchFile;
import culm.bench.batch.Caliper;
import culm.bench.batch.StapleBatch;
import culm.bench.batch.StapleOnBlank;
import culm.bench.batch.StapleReadings;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.geometry.GeometryException;
import culm.model.problem.FileProblemException;

/**
 * The blank that each entry of a log was planned as: its design, with its own staple where that is found in its batch. Addresses count from the log's
 * folder. What cannot be read is told once and the entry is left without a plan. For one thread.
 */
public final class LogDesigns implements Function<Tied, Optional<Blank>> {
    private final Bridge bridge;
    private final Path folder;
    private final Optional<Path> otherwise;
    private final Map<Path, Optional<DesignedBlank>> designs = new HashMap<>();
    private final Map<Path, Optional<StapleBatch>> batches = new HashMap<>();
    private final List<String> problems = new ArrayList<>();

    /** @param log the log's file; @param otherwise the design of entries that name none */
    public LogDesigns(Bridge bridge, Path log, Optional<Path> otherwise) {
        this.bridge = bridge;
        this.folder = log.toAbsolutePath().normalize().getParent();
        this.otherwise = otherwise;
    }

    @Override
    public Optional<Blank> apply(Tied tied) {
        return design(tied).map(d -> staple(tied, d.blank()));
    }

    /** The design of an entry. */
    public Optional<DesignedBlank> design(Tied tied) {
        Optional<Path> file = tied.from().design().isEmpty() ? otherwise : resolve(tied.from().design());
        return file.flatMap(f -> designs.computeIfAbsent(f, this::load));
    }

    /** My limits, of the first design that could be read. */
    public Limits limits() {
        return designs.values().stream().flatMap(Optional::stream).findFirst().map(DesignedBlank::limits).orElse(Limits.STANDARD);
    }

    /** What could not be read so far, each told once. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    private Optional<Path> resolve(String address) {
        try {
            return Optional.of(folder.resolve(address).normalize());
        } catch (InvalidPathException e) {
            note("no file can be called \"" + address + "\"");
            return Optional.empty();
        }
    }

    private Optional<DesignedBlank> load(Path file) {
        try {
            return Optional.of(bridge.read(file));
        } catch (FileProblemException e) {
            note(e.problem().message());
            return Optional.empty();
        }
    }

    private Blank staple(Tied tied, Blank design) {
        Optional<Path> file = tied.from().stapleBatch().isEmpty() ? Optional.empty() : resolve(tied.from().stapleBatch()).filter(Files::isRegularFile);
        if (file.isEmpty()) {
            return design;
        }
        double below = design.number(Inputs.STAPLE_LENGTH) - design.number(Inputs.WRAP_TOP);
        Optional<StapleBatch> batch = batches.computeIfAbsent(file.get(), f -> batch(f, Math.max(0, below)));
        Optional<StapleReadings> readings = batch.flatMap(b -> b.staples().stream().filter(s -> s.label().equalsIgnoreCase(tied.from().staple())).findFirst());
        if (readings.isEmpty()) {
            return design;
        }
        try {
            return StapleOnBlank.put(design, readings.get(), batch.get().caliper(), batch.get().wrapBelowTop());
        } catch (GeometryException refused) {
            note(file.get().getFileName() + ": staple " + readings.get().label() + " is not used: " + refused.getMessage());
            return design;
        }
    }

    private Optional<StapleBatch> batch(Path file, double below) {
        try {
            var read = BatchFile.read(file, folder.relativize(file).toString(), Caliper.ASSUMED, below);
            read.problems().forEach(p -> note(p.message()));
            return Optional.of(read.batch());
        } catch (FileProblemException e) {
            note(e.problem().message());
            return Optional.empty();
        }
    }

    private void note(String problem) {
        if (!problems.contains(problem)) {
            problems.add(problem);
        }
    }
}
