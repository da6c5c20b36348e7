package culm.workbench.internal.history;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;

import culm.design.compare.Choice;
import culm.design.compare.ThreeWay;
import culm.figures.Role;
import culm.geometry.profile.Profiles;
import culm.history.Choices;
import culm.history.Meeting;
import culm.history.Received;
import culm.history.StudioHistory;
import culm.history.Version;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.CompareDialog;
import culm.workbench.internal.sharing.Compared;

/** What is done with a history; asks what it has to know. */
final class HistorySteps {
    private final Workshop workshop;
    private final Path studio;
    private final HistoryWork work;
    private final IWorkbenchPage page;
    private final BiConsumer<String, Role> say;
    private final Runnable again;

    HistorySteps(Workshop workshop, Path studio, HistoryWork work, IWorkbenchPage page, BiConsumer<String, Role> say, Runnable again) {
        this.workshop = workshop;
        this.studio = studio;
        this.work = work;
        this.page = page;
        this.say = say;
        this.again = again;
    }

    private Shell shell() {
        return page.getWorkbenchWindow().getShell();
    }

    private Profiles profiles() {
        return workshop.bridge().profiles();
    }

    private WindowSecrets secrets() {
        return new WindowSecrets(shell(), workshop.look());
    }

    private Optional<String> ask(String title, String question, String first, boolean needed) {
        InputDialog dialog = new InputDialog(shell(), title, question, first, text -> needed && text.isBlank() ? "" : null);
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }

    void begin() {
        ask("Begin a history", "Your name, as it will stand at the versions you keep", workshop.who(), true).ifPresent(who -> {
            workshop.who(who);
            work.start(() -> {
                StudioHistory.begin(studio, profiles(), who).close();
                return studio;
            }, done -> done("The history begins."));
        });
    }

    private void done(String sentence) {
        say.accept(sentence, Role.INK);
        again.run();
    }

    void join() {
        Optional<String> address = ask("Join a shared studio", "The folder or server it is shared through", "", true);
        Optional<String> who = address.flatMap(a -> ask("Join a shared studio", "Your name, as it will stand at the versions you keep", workshop.who(), true));
        Optional<String> folder = who.flatMap(w -> {
            DirectoryDialog dialog = new DirectoryDialog(shell());
            dialog.setText("Join a shared studio");
            dialog.setMessage("An empty folder for it");
            return Optional.ofNullable(dialog.open());
        });
        folder.ifPresent(f -> {
            workshop.who(who.get());
            say.accept("The studio is fetched \u2026", Role.QUIET);
            WindowSecrets secrets = secrets();
            work.start(() -> {
                StudioHistory.join(address.get(), Path.of(f), profiles(), who.get(), secrets).close();
                return Path.of(f);
            }, joined -> {
                workshop.studio().open(joined);
                workshop.rememberStudio(joined);
                say.accept("Joined; the studio is now " + joined + ".", Role.INK);
            });
        });
    }

    void keep() {
        ask("Keep a version", "A few words about it; without any it says what changed", "", false)
                .filter(words -> saved()).ifPresent(words -> work.with(history -> history.keep(words), version -> done(version.isEmpty() ? "Nothing changed since the last version." : "Kept.")));
    }

    void share(Optional<String> now) {
        ask("Share the studio", "A folder or the address of a server; leave passwords out, they are asked for and not stored", now.orElse(""), true)
                .ifPresent(address -> work.with(history -> {
                    history.share(address);
                    return address;
                }, done -> done("Send comes next.")));
    }

    void send() {
        if (!saved()) {
            return;
        }
        say.accept("Sending \u2026", Role.QUIET);
        WindowSecrets secrets = secrets();
        work.with(history -> {
            history.send(secrets);
            return true;
        }, sent -> done("Sent."));
    }

    void receive() {
        if (!saved()) {
            return;
        }
        say.accept("Receiving \u2026", Role.QUIET);
        receive(Choices.NONE);
    }

    private void receive(Choices choices) {
        WindowSecrets secrets = secrets();
        work.with(history -> history.receive(secrets, choices), this::received);
    }

    private void received(Received received) {
        switch (received.outcome()) {
            case NOTHING_NEW -> done("Nothing new.");
            case TAKEN_OVER -> {
                workshop.studio().refresh();
                int count = received.changes().size();
                done("Taken over: " + count + (count == 1 ? " file." : " files."));
            }
            case CHOICE_NEEDED -> choose(received.meetings());
        }
    }

    /** Where both changed something, the same comparison as before a save. */
    private void choose(List<Meeting> meetings) {
        List<Compared> files = meetings.stream().map(m -> new Compared(m.file(), m.comparison().map(ThreeWay::differences).orElseGet(m::conflicts))).toList();
        CompareDialog dialog = new CompareDialog(shell(), workshop, files);
        if (dialog.open() != Window.OK) {
            done("Nothing was taken over.");
            return;
        }
        Map<String, Map<String, Choice>> chosen = dialog.choices();
        receive(new Choices(chosen, null));
    }

    void back(Version version, Optional<Path> file) {
        String what = file.map(f -> workshop.studio().index().flatMap(i -> i.entries().stream().filter(e -> e.file().equals(f)).findFirst()).map(StudioEntry::title).orElse(f.getFileName().toString())).orElse("every file of the studio");
        if (!saved() || !MessageDialog.openConfirm(shell(), "Go back", "This brings " + what + " back to the version of " + VersionsList.when(version)
                + ". What is there now is kept as a version first.")) {
            return;
        }
        work.with(history -> {
            history.back(version, file.map(List::of).orElse(List.of()));
            return version;
        }, done -> {
            workshop.studio().refresh();
            done("Back at the version of " + VersionsList.when(version) + ".");
        });
    }

    /** Asks to save what is edited; says so when something is left. */
    private boolean saved() {
        if (page.getDirtyEditors().length > 0 && !page.saveAllEditors(true) || page.getDirtyEditors().length > 0) {
            say.accept("Something is edited and not saved; nothing was done.", Role.DOES_NOT);
            return false;
        }
        return true;
    }
}
