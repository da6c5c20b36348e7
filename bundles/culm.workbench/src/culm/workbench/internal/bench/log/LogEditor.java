package culm.workbench.internal.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Composite;

import culm.bench.log.GroupBy;
import culm.bench.log.GroupStats;
import culm.bench.log.LogFilter;
import culm.bench.log.LogModel;
import culm.bench.log.Tied;
import culm.explore.Share;
import culm.model.LogEntry;
import culm.model.ReedLog;
import culm.workbench.internal.bench.BenchEditor;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.page.Note;
import culm.workbench.internal.editor.Recompute;

/** The editor for a reed log: its blanks at the left, what is asked of them at the right. */
public final class LogEditor extends BenchEditor<ReedLog> {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.logEditor";

    /** What stands beside the blanks. */
    public enum Page {
        /** One blank. */
        BLANK("Blank"),
        /** What went wrong with it. */
        WRONG("What went wrong"),
        /** Charts of all. */
        CHARTS("Charts"),
        /** What is drying and what goes to whom. */
        WHO("Drying, keepers"),
        /** What the log teaches. */
        LEARN("Learn");

        private final String words;

        Page(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private LogEdits edits;
    private LogBody body;
    private Recompute<LogShown> recompute;
    private LogShown shown = LogShown.NOTHING;
    private Optional<LogEntry> chosen = Optional.empty();
    private LogFilter filtered;
    private List<Tied> passed = List.of();

    /** An editor. */
    public LogEditor() {
        super(ReedLog.class, "log");
    }

    @Override
    protected void fill(Composite all) {
        edits = new LogEdits(session());
        recompute = recompute(this::publish);
        body = new LogBody(all, this, edits, this::guards);
        List<LogEntry> entries = session().document().getEntries();
        chosen = entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
        workshop().units().onChange(all, this::rewrite);
    }

    List<Tied> log() {
        return LogModel.read(session().document());
    }

    @Override
    protected void show() {
        List<LogEntry> entries = session().document().getEntries();
        LogFilter filter = body.filter().filter();
        // One that no longer passes stays while it is edited: else the next field would be another blank's. Another filter drops it.
        Optional<LogEntry> edited = chosen.filter(e -> filter.equals(filtered));
        filtered = filter;
        List<LogEntry> some = new ArrayList<>();
        passed = new ArrayList<>();
        for (LogEntry entry : entries) {
            Tied tied = LogModel.read(entry);
            boolean passes = filter.passes(tied);
            if (passes) {
                passed.add(tied);
            }
            if (passes || edited.filter(e -> e == entry).isPresent()) {
                some.add(entry);
            }
        }
        if (chosen.isEmpty() || !some.contains(chosen.get())) {
            chosen = some.isEmpty() ? Optional.empty() : Optional.of(some.get(some.size() - 1));
        }
        body.rows().show(some);
        body.grid().show();
        chosen.map(body.rows()::row).filter(row -> row >= 0 && row != body.grid().row()).ifPresent(row -> body.select(row));
        body.blank().show(chosen);
        body.header().show(session().name(), sentence(), Optional.empty());
        ask();
    }

    private String sentence() {
        GroupStats all = GroupStats.of("all", passed);
        String which = body.filter().some() ? passed.size() + " of " + session().document().getEntries().size() + " blanks" : passed.size() + (passed.size() == 1 ? " blank" : " blanks");
        return passed.isEmpty() ? which + ". Ctrl+J begins a new one." : which + ". Leaked: " + share(all.leaks()) + ". Keepers: " + share(all.keepers()) + ".";
    }

    private static String share(Share share) {
        return share.of() == 0 ? "none noted" : share.hits() + " of " + share.of() + ", " + Math.round(100 * share.value()) + " %";
    }

    /** Asks anew what comes of the log, for the page that is shown. */
    void ask() {
        LogShown.Question question = new LogShown.Question(log(), passed, chosenBlank(), body.page());
        recompute.ask(() -> LogShown.of(question, workshop().bridge(), session().file()));
    }

    private Optional<Tied> chosenBlank() {
        return chosen.map(LogModel::read);
    }

    private void publish(LogShown now) {
        if (!body.grid().isDisposed()) {
            shown = now;
            body.show(chosenBlank(), passed, shown, session().readOnly().isPresent());
        }
    }

    /** Another unit was chosen; what is still to come is written in it anyway. */
    private void rewrite() {
        body.blank().show(chosen);
        if (!pending()) {
            publish(shown);
        }
    }

    /** Another row of the list is the current one. */
    void rowChosen() {
        Optional<LogEntry> now = body.rows().entry(body.grid().row());
        if (now.isPresent() && !now.equals(chosen)) {
            settle();
            chosen = now;
            body.blank().show(chosen);
            ask();
        }
    }

    /** Chooses a blank and shows its page. */
    void choose(Tied tied) {
        session().document().getEntries().stream().filter(e -> tied.number().equals(e.getNumber())).findFirst().ifPresent(e -> {
            chosen = Optional.of(e);
            showPage(Page.BLANK);
            show();
        });
    }

    /** Chooses a blank by its number. */
    public void choose(String number) {
        session().document().getEntries().stream().filter(e -> number.equals(e.getNumber())).findFirst().ifPresent(e -> choose(LogModel.read(e)));
    }

    /** Shows only blanks of a group. @param name empty for all */
    public void only(GroupBy by, String name) {
        body.filter().only(by, name);
    }

    /** Begins a new blank, with what rarely changes taken over from the last one. */
    public void newBlank() {
        settle();
        body.filter().all();
        edits.add(LocalDate.now()).ifPresent(e -> {
            chosen = Optional.of(e);
            showPage(Page.BLANK);
            show();
            body.blank().form().setFocus();
        });
    }

    /** Takes the chosen blank away. */
    void removeChosen() {
        chosen.ifPresent(edits::remove);
    }

    /** Shows a page. */
    public void showPage(Page page) {
        settle();
        body.page(page);
        ask();
    }

    /** {@return the page that is shown} */
    public Page page() {
        return body.page();
    }

    /** Asks for a table and takes its blanks. */
    public void readTable() {
        new LogTables(this, edits).read();
    }

    /** Asks where to write the blanks that are shown, and writes them as a table. */
    public void writeTable() {
        settle();
        new LogTables(this, edits).write(passed);
    }

    /** {@return what reads and writes tables of this log} */
    public LogTables tables() {
        return new LogTables(this, edits);
    }

    @Override
    protected void settle() {
        body.blank().form().settle();
    }

    @Override
    public void setFocus() {
        focus(body.grid()::setFocus);
        if (body.page() == Page.LEARN) {
            ask(); // a design may use something else by now
        }
    }

    /** {@return whether what is shown will still change} */
    public boolean pending() {
        return recompute.pending();
    }

    /** {@return the list of blanks} */
    public Grid grid() {
        return body.grid();
    }

    /** {@return the sentence under the name} */
    public String headline() {
        return body.header().sentence();
    }

    /** {@return what the shown page says, line by line} */
    public List<String> lines() {
        return switch (body.page()) {
            case WRONG -> body.wrong().lines();
            case WHO -> body.who().notes().notes().stream().map(Note::text).toList();
            case LEARN -> body.learn().notes().stream().map(Note::text).toList();
            case CHARTS -> body.charts().drawings().stream().flatMap(d -> d.onScreen().stream()).map(d -> d.title() + ": " + d.description()).toList();
            case BLANK -> Stream.concat(Stream.of(headline()), body.blank().notes().notes().stream().map(n -> (n.text() + " " + n.link()).strip())).toList();
        };
    }

    /** Does what a link of the shown page does. @param words the link's words */
    public void link(String words) {
        body.learn().notes().stream().filter(n -> n.link().equals(words)).findFirst().orElseThrow(() -> new IllegalArgumentException("no link " + words)).todo().run();
    }
}
