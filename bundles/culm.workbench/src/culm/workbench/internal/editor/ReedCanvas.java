package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.Limits;
import culm.blank.Mark;
import culm.blank.rules.Finding;
import culm.blank.rules.Severity;
import culm.blank.SeamPoint;
import culm.figures.Drawing;
import culm.figures.Handle;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.font.ShippedFont;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedDrawing;
import culm.figures.reed.ReedOptions;
import culm.figures.reed.ReedView;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.widgets.DrawnCanvas;

/** The reed on its axis: wide side, cut, ruler with handles, how far the sides are open. */
final class ReedCanvas extends DrawnCanvas implements Figure {
    private static final double GRAPH_MOST = 320;
    private static final double GRAPH_LEAST = 70;
    private static final double NARROWEST = 260;
    static final int SPARE = 20;
    private static final double ZOOM_STEP = 1.25;
    private static final double ZOOM_MOST = 40;
    private final Units units;
    private static final float RING = 9;
    private final PointerHeight pointer;
    private Optional<Reed> reed = Optional.empty();
    private Limits limits = Limits.STANDARD;
    private Optional<ReedDrawing> drawn = Optional.empty();
    private LaidOut ahead = LaidOut.NOTHING;
    private double zoomFrom = Double.NaN;
    private double zoomTo = Double.NaN;
    private Room kept = new Room(0, 0, false, 0, 0);
    private int bare = -1;
    private int bareWidth = -1;
    private String focused = "";
    private Set<String> ringed = Set.of();
    private String chosen = "";

    ReedCanvas(Composite parent, Look look, Units units, PointerHeight pointer) {
        super(parent, look, SWT.NONE);
        this.units = units;
        this.pointer = pointer;
        follow(units);
        pointer.onChange(() -> {
            if (!isDisposed()) {
                redraw();
            }
        });
        addListener(SWT.MouseVerticalWheel, this::wheel);
    }

    /** @param laidOut what is laid out of it already */
    void show(Optional<Reed> newReed, Limits newLimits, List<Finding> findings, LaidOut laidOut) {
        reed = newReed;
        ahead = laidOut;
        ringed = ringed(findings);
        limits = newLimits;
        anew();
    }

    /** {@return what is drawn now, laid out for this size} */
    Optional<ReedDrawing> reedDrawing() {
        if (drawn.isEmpty() && reed.isPresent() && getClientArea().width > NARROWEST / 2) {
            drawn = Optional.of(layOut(reed.get()));
        }
        return drawn;
    }

    /** One drawing for each change: the room found for the last one is kept while it suffices. */
    private ReedDrawing layOut(Reed what) {
        Rectangle area = getClientArea();
        if (kept.width() == area.width && kept.height() == area.height && kept.zoomed() == zoomed()) {
            ReedDrawing again = draw(what, kept.used(), kept.graph());
            learn(again, kept.used(), kept.graph());
            if (again.drawing().height() <= area.height + 0.5) {
                return again;
            }
        }
        double width = area.width;
        double graph = GRAPH_MOST;
        ReedDrawing best = draw(what, width, graph);
        learn(best, width, graph);
        double over = best.drawing().height() - area.height;
        if (over > 0) {
            graph = Math.max(GRAPH_LEAST, GRAPH_MOST - Math.ceil(over));
            best = draw(what, width, graph);
        }
        while (best.drawing().height() > area.height && width * 0.94 > NARROWEST && !zoomed()) {
            width *= 0.94;
            best = draw(what, width, graph);
        }
        kept = new Room(area.width, area.height, zoomed(), width, graph);
        return best;
    }

    /** A little more room than is needed does not count, and where a little more is needed there is some to spare: else all would be laid out anew at each step of a drag. */
    private void learn(ReedDrawing of, double width, double graph) {
        if (width != getClientArea().width) {
            return;
        }
        int needed = (int) Math.ceil(of.drawing().height() - graph);
        int more = bareWidth == (int) width ? needed - bare : SPARE;
        if (more > 0 || more <= -SPARE) {
            bare = needed + (more > 0 && more < SPARE ? SPARE / 2 : 0);
            bareWidth = (int) width;
        }
    }

    /** The room a drawing got on a canvas of a size. */
    private record Room(int width, int height, boolean zoomed, double used, double graph) {
    }

    private ReedDrawing draw(Reed what, double width, double graph) {
        ReedLayout layout = new ReedLayout(width, graph, zoomFrom, zoomTo, limits, units.now().drawn());
        return ahead.reed(layout).orElseGet(() -> layout.draw(what, look().measure()));
    }

    /** {@return how another blank would be laid out here; empty before anything was} */
    Optional<ReedLayout> next() {
        return kept.width() == 0 ? Optional.empty() : Optional.of(new ReedLayout(kept.used(), kept.graph(), zoomFrom, zoomTo, limits, units.now().drawn()));
    }

    @Override
    public String title() {
        return "Reed";
    }

    @Override
    public Optional<Drawing> onScreen() {
        return reedDrawing().map(ReedDrawing::drawing);
    }

    @Override
    public Optional<Drawing> onPaper(double enlargement) {
        return reed.map(r -> ReedView.draw(r, limits, ReedView.fitting(r, r.top() * enlargement * Drawing.UNITS_PER_MM + 24), ShippedFont.load(),
                ReedOptions.PAPER.in(units.now().drawn())).drawing());
    }

    @Override
    public Table table() {
        List<String> heads = List.of("height mm", "left side open by mm", "right side open by mm");
        return new Table(heads, reed.map(r -> {
            List<SeamPoint> left = r.assessment().left().course();
            List<SeamPoint> right = r.assessment().right().course();
            List<double[]> rows = new ArrayList<>();
            for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
                rows.add(new double[] { left.get(i).z(), left.get(i).open(), right.get(i).open() });
            }
            return rows;
        }).orElse(List.of()));
    }

    @Override
    protected double left() {
        return onScreen().map(d -> Math.max(0, (getClientArea().width - d.width()) / 2)).orElse(0.0);
    }

    /** {@return the height under a place on this canvas, if it is on the reed} */
    OptionalDouble heightAt(int x) {
        if (reedDrawing().isEmpty()) {
            return OptionalDouble.empty();
        }
        Scale scale = drawn.get().scale();
        double z = scale.z(x - left());
        return scale.shows(z) ? OptionalDouble.of(z) : OptionalDouble.empty();
    }

    /** {@return the handle under a place, the nearest} */
    Optional<Handle> handleAt(int x, int y) {
        double near = Handle.RADIUS + 4;
        return onScreen().stream().flatMap(d -> d.handles().stream())
                .filter(h -> Math.hypot(h.x() + left() - x, h.y() - y) <= near)
                .min((a, b) -> Double.compare(Math.hypot(a.x() + left() - x, a.y() - y), Math.hypot(b.x() + left() - x, b.y() - y)));
    }

    /** Marks a handle as the one that the keys move. */
    void focusHandle(String id) {
        focused = id;
        redraw();
    }

    /** {@return the id of the handle that the keys move, or empty} */
    String focusedHandle() {
        return focused;
    }

    /** Rings the mark that an input moves more strongly than others: its finding is chosen. */
    void mark(String path) {
        chosen = moves(path).map(Mark::id).orElse("");
        redraw();
    }

    /** Rings the marks that findings are about. */
    private Set<String> ringed(List<Finding> findings) {
        return findings.stream().filter(f -> f.severity() == Severity.ERROR || f.severity() == Severity.WARNING)
                .flatMap(f -> moves(f.path()).stream()).map(Mark::id).collect(Collectors.toSet());
    }

    private static Optional<Mark> moves(String path) {
        return Arrays.stream(Mark.values()).filter(m -> !path.isEmpty() && m.path().equals(path)).findFirst();
    }

    boolean zoomed() {
        return !Double.isNaN(zoomFrom);
    }

    private void wheel(Event e) {
        if ((e.stateMask & SWT.MOD1) == 0) {
            return;
        }
        e.doit = false;
        zoom(e.count > 0 ? ZOOM_STEP : 1 / ZOOM_STEP, heightAt(e.x).orElse(pointer.height().orElse(0)));
    }

    /** Shows the reed larger or smaller around a height; never smaller than the whole, which is what 0 shows. */
    void zoom(double factor, double around) {
        if (reedDrawing().isEmpty()) {
            return;
        }
        if (factor <= 0) {
            zoomFrom = Double.NaN;
            zoomTo = Double.NaN;
            anew();
            return;
        }
        double top = reed.get().top();
        Scale next = drawn.get().scale().zoomed(around, factor);
        double length = next.to() - next.from();
        if (length < top / ZOOM_MOST) {
            return;
        }
        if (length >= top) {
            zoomFrom = Double.NaN;
            zoomTo = Double.NaN;
        } else {
            zoomFrom = Math.max(0, Math.min(top - length, next.from()));
            zoomTo = zoomFrom + length;
        }
        anew();
    }

    /** Shows the whole reed. */
    void zoomOut() {
        zoom(0, 0);
    }

    /** {@return the height that all but the graph takes on a canvas so wide} */
    private int bare(int width) {
        if (bareWidth != width) {
            bare = reed.map(r -> (int) Math.ceil(draw(r, width, GRAPH_LEAST).drawing().height() - GRAPH_LEAST)).orElse(330);
            bareWidth = reed.isPresent() ? width : -1;
        }
        return bare;
    }

    /** {@return the height below which the reed would have to be drawn smaller than the width allows} */
    int leastHeight(int width) {
        return bare(width) + (int) GRAPH_LEAST;
    }

    /** {@return the height above which a drawing of this width has nothing to fill} */
    int mostHeight(int width) {
        return bare(width) + (int) GRAPH_MOST;
    }

    /** {@return whether what is drawn now needs more or less height than was known} */
    boolean heightChanged() {
        int before = bare;
        return reedDrawing().isPresent() && bare != before;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 640 : wHint;
        return new Point(width, mostHeight(width));
    }

    @Override
    protected void forget() {
        drawn = Optional.empty();
    }

    @Override
    protected void paintOver(GC gc) {
        Optional<ReedDrawing> now = reedDrawing();
        if (now.isEmpty()) {
            return;
        }
        pointer.height().ifPresent(z -> {
            if (now.get().scale().shows(z)) {
                Drawing over = new Drawing(now.get().drawing().width(), now.get().drawing().height(), "", "",
                        List.of(now.get().pointer(z, look().measure())));
                look().painter().paint(gc, over, left(), 0);
            }
        });
        ringed.forEach(id -> ring(gc, now.get(), id, SWT.LINE_SOLID, Role.DOES_NOT, id.equals(chosen) ? 2 : 1));
        if (!ringed.contains(chosen)) {
            ring(gc, now.get(), chosen, SWT.LINE_SOLID, Role.QUIET, 2);
        }
        if (isFocusControl()) {
            ring(gc, now.get(), focused, SWT.LINE_DOT, Role.INK, 1);
        }
    }

    private void ring(GC gc, ReedDrawing now, String id, int line, Role role, int width) {
        now.drawing().handles().stream().filter(h -> h.id().equals(id)).findFirst().ifPresent(h -> {
            gc.setForeground(look().colour(role));
            gc.setLineWidth(width);
            gc.setLineStyle(line);
            Path round = new Path(gc.getDevice()); // not an oval, which lies on whole points beside the handle
            round.addArc((float) (h.x() + left() - RING), (float) (h.y() - RING), 2 * RING, 2 * RING, 0, 360);
            gc.drawPath(round);
            round.dispose();
        });
    }
}
