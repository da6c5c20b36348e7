package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;
import culm.design.edit.Edits;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.Design;
import culm.model.Variant;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.widgets.LinkText;

/** The variants that were kept in the design's file, each with its verdict. */
public final class KeptBar extends Composite {
    private static final int WIDE = 430;
    private final Workshop workshop;
    private final DesignSession session;
    private final Consumer<FileProblemException> refused;
    private final Combo names;
    private final Recompute<List<String>> recompute;
    private List<Variant> kept = List.of();
    private List<String> told = List.of();
    private Object shownOf = new Object();

    KeptBar(Composite parent, Workshop workshop, DesignSession session, Consumer<FileProblemException> refused) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.refused = refused;
        this.recompute = new Recompute<>(workshop.worker(), workshop.look()::later, this::publish);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        Label label = new Label(this, SWT.NONE);
        label.setText("kept");
        label.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, Role.QUIET);
        names = new Combo(this, SWT.READ_ONLY);
        names.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        names.setData("culm.explore", "kept");
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = WIDE;
        names.setLayoutData(wide);
        link("use", this::use);
        link("open as a design", this::open);
        workshop.units().onChange(this, () -> publish(told));
        link("give up", () -> chosen().ifPresent(v -> change(edits -> edits.dropVariant(v.getId()))));
    }

    private void link(String words, Runnable todo) {
        LinkText link = new LinkText(this, workshop.look(), words, Size.BODY);
        link.onClick(todo);
    }

    private Optional<Variant> chosen() {
        int at = names.getSelectionIndex();
        return at >= 0 && at < kept.size() ? Optional.of(kept.get(at)) : Optional.empty();
    }

    /** Changes the design to the chosen variant. */
    public void use() {
        chosen().ifPresent(v -> change(edits -> edits.use(v, "use \"" + v.getName() + "\"")));
    }

    private void open() {
        chosen().ifPresent(v -> Attempt.at(() -> PickActions.open(workshop, session, with(v), session.design().getName() + ", " + v.getName()), refused));
    }

    private Design with(Variant variant) {
        Design copy = EcoreUtil.copy(session.design());
        Edits.of(copy, part -> part, new java.util.SplittableRandom(1)).use(variant, "use").execute();
        return copy;
    }

    private void change(DesignSession.Change change) {
        Attempt.at(() -> session.change(change, ""), refused);
    }

    /** Shows what is kept now; takes no room when nothing is. */
    void show() {
        boolean any = !session.design().getVariants().isEmpty();
        GridData data = (GridData) getLayoutData();
        if (data.exclude == any) {
            data.exclude = !any;
            setVisible(any);
            getParent().layout();
        }
        if (!any || shownOf == session.blank()) {
            return;
        }
        shownOf = session.blank();
        kept = List.copyOf(session.design().getVariants());
        List<String> titles = kept.stream().map(Variant::getName).toList();
        List<Optional<DesignedBlank>> blanks = kept.stream().map(this::blank).toList();
        recompute.ask(() -> said(titles, blanks));
    }

    private Optional<DesignedBlank> blank(Variant variant) {
        try {
            return Optional.of(workshop.bridge().draft(with(variant), session.file(), session.studio().shown(session.file()), session.studio()));
        } catch (FileProblemException e) {
            return Optional.empty(); // said in words below
        }
    }

    /** Each with its verdict, lengths as {@link culm.geometry.words.Told} keeps them. */
    private List<String> said(List<String> titles, List<Optional<DesignedBlank>> blanks) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < titles.size(); i++) {
            all.add(titles.get(i) + ": " + blanks.get(i).map(b -> {
                var assessment = b.assess();
                return Verdict.of(assessment, b.judge(assessment, workshop.rules())).told();
            }).orElse("a part of it is missing"));
        }
        return all;
    }

    private void publish(List<String> words) {
        told = words;
        if (!isDisposed()) {
            int at = names.getSelectionIndex();
            boolean grown = words.size() > names.getItemCount();
            names.setItems(words.stream().map(workshop.units().now().drawn()::told).toArray(String[]::new));
            names.select(grown || at < 0 ? words.size() - 1 : Math.min(at, words.size() - 1));
        }
    }

    /** {@return the words of what is kept} */
    public List<String> words() {
        return List.of(names.getItems());
    }

    /** {@return whether the words will still change} */
    public boolean pending() {
        return recompute.pending();
    }
}
