package culm.workbench.internal.explore;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;

import culm.bench.plots.MapPlot;
import culm.blank.Inputs;
import culm.design.DesignedBlank;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.VariantPlan;
import culm.explore.VariantTable;
import culm.explore.Varied;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.sharing.Attempt;

/** What if: variants of a design as a table, as a map of two numbers, as lines through parallel axes. */
public final class VariantsPage extends Composite {
    /** How they are looked at. */
    public enum Sight {
        /** Row by row. */
        TABLE,
        /** Two numbers, with regions. */
        MAP,
        /** A line for each. */
        PARALLEL
    }

    private final Workshop workshop;
    private final DesignSession session;
    private final Consumer<FileProblemException> refused;
    private final AxisList list;
    private final PlanBar plan;
    private final RunBar bar;
    private final Choice sights;
    private final SightBar sightBar;
    private final Composite stack;
    private final RowsCanvas table;
    private final ChartCanvas map;
    private final ChartCanvas parallel;
    private final PickActions actions;
    private final KeptBar kept;
    private final Recompute<Ordered> ordering;
    private final Recompute<Crossed> crossings;
    private Optional<VariantsFound> found = Optional.empty();
    private Optional<MapMade> made = Optional.empty();
    private RowOrder order = RowOrder.ALL;
    private int[] crossing;

    private record Ordered(VariantsFound of, int[] rows, RowOrder how) {
    }

    /** A crossing of the map with the verdict it would have as a design. */
    private record Crossed(MapMade map, int[] at, String verdict) {
    }

    VariantsPage(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.refused = refused;
        this.ordering = new Recompute<>(workshop.worker(), workshop.look()::later, this::ordered);
        this.crossings = new Recompute<>(workshop.worker(), workshop.look()::later, this::crossed);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 12;
        layout.marginHeight = 4;
        layout.verticalSpacing = 4;
        setLayout(layout);
        list = new AxisList(this, workshop, new StudioParts(workshop, session), () -> layout(true, true));
        wide(list);
        plan = new PlanBar(this, workshop.look());
        wide(plan);
        bar = plan.bar();
        bar.onRun(this::run);
        Composite line = wrapped();
        sights = new Choice(line, workshop.look(), Size.BODY, List.of("Table", "Map", "Parallel axes"), i -> look(Sight.values()[i]));
        sightBar = new SightBar(line, workshop.look(), workshop.units(), this::reorder, this::relined);
        stack = new Composite(this, SWT.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        workshop.look().dress(stack, Role.PAPER, Role.INK);
        table = new RowsCanvas(stack, workshop);
        table.onSort(this::sort);
        table.onSelect(this::redrawn);
        map = new ChartCanvas(stack, workshop, "Map of two numbers");
        map.onPick(this::cross);
        parallel = new ChartCanvas(stack, workshop, "Variants on parallel axes");
        actions = new PickActions(this, workshop, session, this::picked, () -> bar.say("Choose a variant first.", true), refused);
        actions.link("pin", "Compares all others with the chosen row", this::pin);
        actions.link("unpin", "Compares all others with this design", () -> table.pin(RowsCanvas.OWN, "this design"));
        actions.link("write as CSV…", "Writes every variant into a file, however many there are", this::write);
        wide(actions);
        table.onOpen(actions::open);
        kept = new KeptBar(this, workshop, session, refused);
        wide(kept);
        ((GridData) kept.getLayoutData()).exclude = true;
        kept.setVisible(false);
        workshop.units().onChange(this, table::unit);
        list.onChange(() -> sightBar.offer(list));
        look(Sight.TABLE);
    }

    /** A row whose end goes below its beginning where there is no room beside it. */
    private Composite wrapped() {
        Composite row = new Composite(this, SWT.NONE);
        RowLayout layout = new RowLayout();
        layout.marginLeft = 0;
        layout.marginRight = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.center = true;
        row.setLayout(layout);
        workshop.look().dress(row, Role.PAPER, Role.INK);
        wide(row);
        return row;
    }

    private static void wide(Composite control) {
        control.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    }

    /** Shows the design as it is now. */
    void show() {
        session.blank().ifPresent(b -> {
            list.offer(b.blank());
            if (list.rows().isEmpty()) {
                list.add(Inputs.TIE_LENGTH);
                list.add(Varied.WIDTH);
                run(); // something to look at, without a click
            }
            bar.compare(found.map(VariantsFound::base), b.blank());
        });
        kept.show();
    }

    /** Looks at the variants in another way. */
    public void look(Sight sight) {
        sights.choose(sight.ordinal());
        ((StackLayout) stack.getLayout()).topControl = switch (sight) {
            case TABLE -> table;
            case MAP -> map;
            case PARALLEL -> parallel;
        };
        sightBar.show(sight);
        stack.layout();
        redrawn();
        if (bar.running() || found.isEmpty()) {
            return;
        }
        if (sight == Sight.MAP && made.isEmpty()) {
            run();
        } else {
            bar.say(sight == Sight.MAP ? bounds(made.get()) : said(found.get()), false);
        }
    }

    private Sight sight() {
        return Sight.values()[sights.chosen()];
    }

    /** Runs what is asked: the variants, or the map while that is looked at. */
    public void run() {
        bar.ask(session.blank(), now -> Attempt.at(() -> {
            List<Axis> axes = list.axes();
            if (sight() == Sight.MAP) {
                map(study(now), judging(now), axes);
            } else {
                variants(study(now), judging(now), axes);
            }
        }, refused));
    }

    private Judging judging(DesignedBlank now) {
        return new Judging(now, workshop.rules(), workshop.extensions().findings());
    }

    private Study study(DesignedBlank now) {
        return new Study(now.blank(), List.of(), now.limits(), workshop.rules());
    }

    private void variants(Study study, Judging judging, List<Axis> axes) {
        VariantPlan chosen = plan.plan();
        if (chosen.rows(axes) > VariantTable.MOST_ROWS) {
            bar.say(String.format(java.util.Locale.ROOT, "%,d variants are more than a table takes; write them as CSV.", chosen.rows(axes)), true);
            return;
        }
        var links = list.links();
        bar.<VariantsFound>run("variants", watcher -> VariantsFound.run(study, judging, axes, chosen, links, watcher), (result, ended) -> take(result), VariantsPage::said);
    }

    private void map(Study study, Judging judging, List<Axis> axes) {
        Axis.Numbers[] two = sightBar.two(axes);
        MapPlot.Lines lines = sightBar.lines();
        bar.<MapMade>run("crossings", watcher -> MapMade.make(study, judging, two[0], two[1], lines, watcher), (result, ended) -> {
            made = Optional.of(result);
            crossing = null;
            map.show(Optional.of(result));
        }, VariantsPage::bounds);
    }

    private static String bounds(MapMade m) {
        return m.partial() ? "Stopped; the regions are not known." : MapPlot.bounds(m.map());
    }

    private static String said(VariantsFound f) {
        String works = String.format(java.util.Locale.ROOT, "%,d of %,d pass every rule, give or take aside", f.works(), f.table().rows());
        return f.table().rows() < f.planned() ? String.format(java.util.Locale.ROOT, "Stopped after %,d of %,d; %s.", f.table().rows(), f.planned(), works) : works + ".";
    }

    private void take(VariantsFound result) {
        found = Optional.of(result);
        made = Optional.empty();
        map.show(Optional.empty());
        order = RowOrder.ALL;
        table.show(result);
        sightBar.offer(result);
        reorder();
    }

    private void sort(RowOrder wanted) {
        order = wanted;
        reorder();
    }

    private void reorder() {
        found.ifPresent(f -> {
            RowOrder now = sightBar.filter(order);
            ordering.ask(() -> new Ordered(f, now.of(f.table()), now));
        });
    }

    private void ordered(Ordered now) {
        if (!isDisposed() && found.isPresent() && found.get() == now.of()) {
            table.rows(now.rows(), now.how());
            redrawn();
        }
    }

    private void redrawn() {
        parallel.show(found.filter(f -> sight() == Sight.PARALLEL).map(f -> new ParallelContent(f, table.rows(), table.chosen())));
    }

    private void relined() {
        made = made.map(m -> m.with(sightBar.lines()));
        made.ifPresent(m -> map.show(Optional.of(m)));
    }

    private void cross(double x, double y) {
        made.ifPresent(m -> {
            crossing = m.nearest(x, y, workshop.units().now().drawn());
            said(m, crossing, RowsCanvas.NOT_YET);
            int[] at = crossing;
            crossings.ask(() -> new Crossed(m, at, m.judged(at).words()));
        });
    }

    private void crossed(Crossed now) {
        if (!isDisposed() && crossing == now.at()) {
            said(now.map(), now.at(), now.verdict());
        }
    }

    private void said(MapMade m, int[] at, String verdict) {
        bar.say(sightBar.said(m, at, verdict, workshop.units().now().drawn()), false);
    }

    /** Compares all rows with the chosen one. */
    public void pin() {
        if (found.isPresent() && table.chosen() >= 0) {
            table.pin(table.chosen(), "variant " + (table.chosen() + 1));
        }
    }

    private Optional<Picked> picked() {
        if (sight() == Sight.MAP) {
            return crossing == null ? Optional.empty() : made.map(m -> new Picked(java.util.Map.of(), java.util.Map.of(m.map().x().id(), m.map().x().values()[crossing[0]],
                    m.map().y().id(), m.map().y().values()[crossing[1]]), m.words(crossing, Lengths.MM), m.base()));
        }
        return table.chosen() < 0 ? Optional.empty() : found.map(f -> f.picked(f.line(table.chosen()).values()));
    }

    private void write() {
        bar.ask(session.blank(), now -> Attempt.at(() -> CsvRun.ask(getShell(), bar, study(now), list.axes(), plan.plan(), now.name()), refused));
    }

    /** {@return the variants that were made last} */
    public Optional<VariantsFound> found() {
        return found;
    }

    /** {@return what varies} */
    public AxisList list() {
        return list;
    }

    /** {@return which combinations are tried} */
    public PlanBar plan() {
        return plan;
    }

    /** {@return the run} */
    public RunBar bar() {
        return bar;
    }

    /** {@return the table} */
    public RowsCanvas table() {
        return table;
    }

    /** {@return what can be done with what was found} */
    public PickActions actions() {
        return actions;
    }

    /** {@return the variants that were kept} */
    public KeptBar kept() {
        return kept;
    }

    SightBar sightBar() {
        return sightBar;
    }

    /** {@return whether something is still to come} */
    public boolean pending() {
        return bar.running() || ordering.pending() || table.pending() || crossings.pending() || kept.pending();
    }

    /** {@return its drawings} */
    public List<Figure> figures() {
        return sight() == Sight.MAP ? List.of(map, parallel) : List.of(parallel, map);
    }
}
