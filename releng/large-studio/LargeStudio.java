import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;

import culm.blank.rules.Rules;
import culm.design.Bridge;
import culm.design.parts.Duplicates;
import culm.design.parts.PartAddress;
import culm.design.parts.Replacement;
import culm.geometry.profile.Profiles;
import culm.model.files.ModelFiles;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.studio.StudioIndex;

/**
 * Makes a large invented studio, the same each time, and measures what a person waits for: opening it, finding by name, the users of a part.
 * Arguments: folder, number of parts, number of designs.
 */
public final class LargeStudio {
    private static final String[] PLACES = {"harbour", "mooring", "quay", "beacon", "ferry", "shoal", "tide", "anchor", "jetty", "keel", "lantern", "rope"};
    private static final String[] KINDS = {"staple", "gouge", "shape", "thread"};
    private static final int FILES = 10;
    private static final int RUNS = 7;
    private final Path folder;
    private final int parts;
    private final int designs;
    private final SplittableRandom random = new SplittableRandom(2026);

    private LargeStudio(Path folder, int parts, int designs) {
        this.folder = folder;
        this.parts = parts;
        this.designs = designs;
    }

    public static void main(String[] args) throws Exception {
        LargeStudio large = new LargeStudio(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]));
        large.write();
        large.measure();
    }

    private void write() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("studio.limits"), "<limits format=\"1\" id=\"limits\"/>\n");
        for (int f = 0; f < FILES; f++) {
            StringBuilder text = new StringBuilder(head("parts", "drawer-" + f));
            for (int i = f; i < parts; i += FILES) {
                text.append(part(i));
            }
            Files.writeString(folder.resolve("drawer-" + f + ".parts"), text.append("</parts>\n"));
        }
        for (int d = 0; d < designs; d++) {
            Path term = Files.createDirectories(folder.resolve("term-" + d % 20));
            Files.writeString(term.resolve("blank-" + d + ".reed"), design(d));
        }
    }

    private String head(String root, String id) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<" + root + " format=\"1\" id=\"" + id + "\">\n  <name>" + name() + " " + id + "</name>\n";
    }

    private String name() {
        return PLACES[random.nextInt(PLACES.length)] + " " + PLACES[random.nextInt(PLACES.length)];
    }

    private String number(double around, double spread) {
        return String.format(Locale.ROOT, "%.2f", around + spread * (2 * random.nextDouble() - 1));
    }

    private String part(int i) {
        String kind = KINDS[i % KINDS.length];
        String begin = "  <" + kind + " id=\"" + kind + "-" + i + "\">\n    <name>" + name() + " " + i + "</name>\n    <source>invented</source>\n";
        String rest = switch (kind) {
            case "staple" -> "    <length value=\"" + number(47, 0.6) + "\" how=\"measured\"/>\n    <corkTop value=\"25\"/>\n    <profile type=\"culm.staple.oval\" version=\"1\">\n"
                    + parameter("topWide", number(3.38, 0.06)) + parameter("topNarrow", number(2.09, 0.06)) + parameter("bottom", number(5.4, 0.1)) + "    </profile>\n";
            case "gouge" -> "    <tube value=\"" + number(10.5, 0.3) + "\"/>\n    <profile type=\"culm.gouge.middleAndSide\" version=\"1\">\n" + parameter("middle", number(0.6, 0.03))
                    + parameter("side", number(0.45, 0.03)) + parameter("sideAt", "3.5") + "    </profile>\n";
            case "shape" -> "    <foldedLength value=\"37\"/>\n    <profile type=\"culm.shape.measured\" version=\"1\">\n      <table name=\"places\">\n" + rows() + "      </table>\n    </profile>\n";
            default -> "    <diameter value=\"" + number(0.41, 0.02) + "\"/>\n";
        };
        return begin + rest + "  </" + kind + ">\n";
    }

    private static String parameter(String name, String value) {
        return "      <parameter name=\"" + name + "\" value=\"" + value + "\" tolerance=\"0.02\" how=\"measured\"/>\n";
    }

    private String rows() {
        double[][] usual = {{0, 7}, {4, 6.95}, {10, 6.55}, {16, 5.75}, {22, 5.1}, {26, 4.83}, {30, 4.65}, {37, 4.35}};
        StringBuilder text = new StringBuilder();
        for (double[] row : usual) {
            text.append("        <row id=\"r").append((int) row[0]).append("\" fromFold=\"").append((int) row[0]).append("\" width=\"").append(number(row[1], 0.08)).append("\"/>\n");
        }
        return text.toString();
    }

    private String design(int d) {
        StringBuilder text = new StringBuilder(head("reed", "blank-" + d));
        for (int k = 0; k < KINDS.length; k++) {
            // The first part of each kind is used by one design in ten, as a class's own set is.
            int i = random.nextInt(10) == 0 ? k : KINDS.length * random.nextInt(parts / KINDS.length) + k;
            text.append("  <").append(KINDS[k]).append(" link=\"../drawer-").append(i % FILES).append(".parts#").append(KINDS[k]).append("-").append(i).append("\"/>\n");
        }
        return text.append("  <tie>\n    <length value=\"").append(number(72, 1)).append("\"/>\n    <wrapTop value=\"46\"/>\n  </tie>\n</reed>\n").toString();
    }

    private void measure() throws Exception {
        Profiles profiles = Profiles.load();
        long bytes = 0;
        try (var all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                bytes += Files.size(file);
            }
        }
        System.out.printf("%d parts in %d files, %d designs, %.1f MiB on disk; medians of %d runs%n", parts, FILES, designs, bytes / 1048576.0, RUNS);
        timed("open the studio: every file read", () -> Studio.at(folder, new ModelFiles()).index());
        Studio studio = Studio.at(folder, new ModelFiles());
        StudioIndex index = studio.index();
        check(index.of(FileKind.DESIGN).size() == designs && index.parts().size() == parts && index.problems().isEmpty(), "the studio was not read whole: " + index.problems());
        timed("look again, nothing changed", studio::index);
        Path one = index.of(FileKind.DESIGN).get(designs / 2).file();
        timed("look again, one design changed", () -> {
            Files.writeString(one, Files.readString(one) + "\n");
            return studio.index();
        });
        timed("find designs by a piece of their name", () -> index.find("mooring tide"));
        timed("find parts by a piece of their name", () -> index.findParts("mooring tide"));
        PartAddress staple = new PartAddress(folder.resolve("drawer-0.parts").toAbsolutePath().normalize(), "staple-0");
        int users = index.usersOf(staple.file(), staple.id()).size();
        check(users > designs / 20, "only " + users + " users");
        timed("users of one part, " + users + " designs", () -> index.usersOf(staple.file(), staple.id()));
        StudioEntry first = index.of(FileKind.DESIGN).get(0);
        timed("open one design and compute it", () -> new Bridge(profiles).read(first.file()).assess());
        timed("preview of that part replaced in " + users + " designs", () -> new Replacement(studio, new Bridge(profiles), Rules.load(), staple,
                new PartAddress(folder.resolve("drawer-4.parts").toAbsolutePath().normalize(), "staple-4")).preview(index));
        timed("duplicates among all parts", () -> Duplicates.find(studio, index));
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        System.out.printf("%-56s %11.1f MiB%n", "memory held by the list and the parts read", (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0);
    }

    private static void timed(String what, Callable<?> work) throws Exception {
        List<Object> kept = new ArrayList<>();
        double[] millis = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            kept.add(work.call());
            millis[i] = (System.nanoTime() - start) / 1e6;
            kept.clear();
        }
        double first = millis[0];
        Arrays.sort(millis);
        System.out.printf(Locale.ROOT, "%-56s %11.3f ms   first run %.1f ms%n", what, millis[RUNS / 2], first);
    }

    private static void check(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }
}
