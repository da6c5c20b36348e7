package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.blank.Closing;
import culm.blank.SeamPoint;
import culm.blank.Stretch;
import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Lines;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.Ticks;

/**
 * How far the sides are open over height: the course at each seam, the closing with its give or take, closed stretches, the wrap. The closing is a
 * full circle where its whole give or take is within the limits, a ring where only its value is, a cross where it is not.
 */
final class SeamGraph {
    private static final double NUMBERS_ROOM = 34;
    private final Reed reed;
    private final MarkLook look;
    private final Scale scale;
    private final TextMeasure measure;
    private final Box box;
    private final Assessment a;

    SeamGraph(Reed reed, MarkLook look, Scale scale, TextMeasure measure, Box box) {
        this.reed = reed;
        this.look = look;
        this.scale = scale;
        this.measure = measure;
        this.box = box;
        this.a = reed.assessment();
    }

    /** The axis up the page, mm open. Both signs are always shown. */
    Axis axis() {
        double low = -0.1;
        double high = 0.1;
        for (Closing closing : List.of(a.left(), a.right())) {
            for (SeamPoint point : closing.course()) {
                if (scale.shows(point.z())) {
                    low = Math.min(low, point.open());
                    high = Math.max(high, point.open());
                }
            }
        }
        double room = 0.12 * (high - low);
        return new Axis(low - room, high + room, box.bottom(), box.y());
    }

    void draw(Pen pen) {
        Axis y = axis();
        if (a.closing().course().isEmpty()) {
            why(pen);
            return;
        }
        pen.group(Part.GRAPH, "how far the sides are open", p -> {
            p.group(Part.AXIS, "", g -> grid(g, y));
            p.group(Part.SEAM, "", Optional.of(new Box(scale.left(), box.y(), scale.right() - scale.left(), box.height())), g -> course(g, y));
            p.group(Part.MARKS, "", g -> closing(g, y));
        });
    }

    private void why(Pen pen) {
        double line = box.y() + 20;
        for (String text : Lines.of(a.closing().refusal().filter(why -> !reed.isSilent()).map(look.unit()::told).orElse("The sides cannot be told."), measure, Size.BODY, false, box.width())) {
            pen.text(text, box.x(), line, Anchor.START, Size.BODY, Role.DOES_NOT);
            line += Lines.height(measure, Size.BODY);
        }
    }

    private void grid(Pen p, Axis y) {
        double from = within(scale.x(Math.max(0, reed.caneEnd())) - 10, NUMBERS_ROOM, 80);
        double to = within(scale.x(reed.stapleTop()), 80, 0);
        if (reed.wrapTop() > reed.wrapBottom()) {
            double left = Math.max(scale.left(), scale.x(reed.wrapBottom()));
            double right = Math.min(scale.right(), scale.x(reed.wrapTop()));
            if (right > left) {
                p.shape(Path.box(new Box(left, box.y(), right - left, box.height())), Style.tint(Role.THREAD, 0.09));
                if (from - left > 2 * NUMBERS_ROOM) {
                    p.text("wrap", left + 5, box.y() + 14, Anchor.START, Size.SMALL, Role.THREAD);
                }
            }
        }
        Ticks ticks = look.unit().ticks(y.from(), y.to(), box.height() / 28);
        for (double tick : ticks.values()) {
            double place = y.at(look.unit().toMm(tick));
            if (tick != 0) {
                p.line(from, place, to, place, Role.GRID, Style.THIN);
            }
            p.text(ticks.label(tick), from - 5, place + 4, Anchor.END, Size.SMALL, Role.QUIET);
        }
        p.line(from, y.at(0), Math.max(to, scale.right()), y.at(0), Role.QUIET, 1);
    }

    private double within(double x, double fromLeft, double fromRight) {
        return Math.max(scale.left() + fromLeft, Math.min(scale.right() - fromRight, x));
    }

    private void course(Pen p, Axis y) {
        a.closeBand().ifPresent(band -> band(p, band));
        boolean crooked = a.left() != a.right();
        List<SeamPoint> judged = a.closing().course();
        List<double[]> area = new ArrayList<>();
        for (SeamPoint point : judged) {
            area.add(new double[] {scale.x(point.z()), y.at(point.open())});
        }
        List<double[]> closed = new ArrayList<>(area);
        closed.add(new double[] {scale.x(judged.get(judged.size() - 1).z()), y.at(0)});
        closed.add(new double[] {scale.x(judged.get(0).z()), y.at(0)});
        p.shape(Path.polygon(closed), Style.tint(Role.BARK, 0.13));
        if (crooked) {
            Closing other = a.closing() == a.left() ? a.right() : a.left();
            p.shape(Path.through(other.course().stream().map(c -> new double[] {scale.x(c.z()), y.at(c.open())}).toList()),
                    Style.line(Role.BARK, 1.4).broken(Dash.DASHED));
            name(p, y, a.left(), "left");
            name(p, y, a.right(), "right");
        }
        p.shape(Path.through(area), Style.line(Role.BARK, 2));
        for (Stretch stretch : a.closing().closed()) {
            p.line(scale.x(stretch.from()), y.at(0), scale.x(stretch.to()), y.at(0), look.closing(), 4);
        }
        p.shape(Path.line(scale.x(reed.stapleTop()), box.y(), scale.x(reed.stapleTop()), box.bottom()),
                Style.line(Role.QUIET, Style.THIN).broken(Dash.DASHED));
    }

    /** Names the course of one seam where it begins. */
    private void name(Pen p, Axis y, Closing seam, String name) {
        if (!seam.course().isEmpty()) {
            SeamPoint start = seam.course().get(0);
            p.text(name, scale.x(start.z()) + 8, y.at(start.open()) + 3, Anchor.START, Size.SMALL, Role.INK);
        }
    }

    private void band(Pen p, Band band) {
        double from = scale.x(band.low());
        double to = scale.x(Math.max(band.low(), Math.min(band.high(), reed.stapleTop())));
        Role role = look.closing();
        p.shape(Path.box(new Box(from, box.y(), to - from, box.height())), Style.tint(role, 0.16));
        p.shape(Path.line(from, box.y(), from, box.bottom()), Style.line(role, Style.THIN).broken(Dash.DOTTED));
        if (!band.open()) {
            p.shape(Path.line(to, box.y(), to, box.bottom()), Style.line(role, Style.THIN).broken(Dash.DOTTED));
        }
    }

    private void closing(Pen p, Axis y) {
        if (a.sidesCloseAt().isPresent()) {
            double z = a.sidesCloseAt().getAsDouble();
            if (scale.shows(z)) {
                Role role = look.closing();
                Style sign = look.surely() ? Style.fill(role).edged(Role.PAPER, 1) : Style.fill(Role.PAPER).edged(role, 2.4);
                p.shape(look.fits() ? Path.circle(scale.x(z), y.at(0), 5.5) : cross(scale.x(z), y.at(0)), look.fits() ? sign : Style.line(role, 2.4));
                String turns = Numbers.fixed(a.turnsLeft().orElse(0), 1) + (one(a.turnsLeft().orElse(0)) ? " turn left" : " turns left");
                String band = a.turnsBand().map(b -> ", give or take " + Numbers.fixed(b.half(), 1)).orElse("");
                beside(p, scale.x(Math.max(z, Math.min(reed.stapleTop(), a.closeBand().map(Band::high).orElse(z)))), y.at(0) - 9, turns, band, role);
            }
        } else if (scale.shows(reed.stapleTop())) {
            double open = a.openAtStapleTop().orElse(0);
            double x = scale.x(reed.stapleTop());
            p.shape(cross(x, y.at(open)), Style.line(Role.DOES_NOT, 2.4));
            beside(p, x, y.at(open) - 9, "open by " + look.unit().text(open, 2), " at the staple's top", Role.DOES_NOT);
        }
    }

    private static boolean one(double turns) {
        return Numbers.fixed(turns, 1).equals("1.0");
    }

    /** Right of a place; in two lines where one is too long, left of it where neither fits. */
    private void beside(Pen p, double x, double y, String bold, String plain, Role role) {
        double first = measure.width(bold, Size.BODY, true);
        double second = measure.width(plain, Size.BODY, false);
        double room = scale.right() - x - 10;
        if (first + second <= room) {
            p.bold(bold, x + 10, y, Anchor.START, Size.BODY, role);
            p.text(plain, x + 10 + first, y, Anchor.START, Size.BODY, Role.QUIET);
            return;
        }
        String rest = plain.replaceFirst("^[, ]+", "");
        boolean right = Math.max(first, measure.width(rest, Size.BODY, false)) <= room;
        double graph = Math.min(scale.x(reed.wrapBottom()), scale.x(reed.caneEnd()) - NUMBERS_ROOM - 10) - 6;
        double widest = Math.max(first, second);
        double at = right ? x + 10 : graph - widest > scale.left() ? graph : Math.max(scale.left() + widest, x - 12);
        p.bold(bold, at, y - Lines.height(measure, Size.BODY), right ? Anchor.START : Anchor.END, Size.BODY, role);
        p.text(rest, at, y, right ? Anchor.START : Anchor.END, Size.BODY, Role.QUIET);
    }

    private static Path cross(double x, double y) {
        return Path.start().move(x - 5, y - 5).line(x + 5, y + 5).move(x - 5, y + 5).line(x + 5, y - 5).path();
    }
}
