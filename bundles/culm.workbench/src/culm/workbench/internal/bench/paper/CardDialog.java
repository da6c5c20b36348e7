package culm.workbench.internal.bench.paper;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import culm.bench.batch.BatchPlan;
import culm.bench.batch.Served;
import culm.bench.card.Card;
import culm.bench.card.CardHead;
import culm.bench.card.CardPage;
import culm.bench.card.Cards;
import culm.bench.card.DesignHead;
import culm.design.DesignedBlank;
import culm.figures.Drawing;
import culm.figures.font.ShippedFont;
import culm.figures.paper.Paper;
import culm.model.Design;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;

/** Bench cards: of one design, or of a batch for each setting, for each staple, or one for the class. */
public final class CardDialog extends PagesDialog {
    private static final List<String> EACH = List.of("each setting", "each staple", "the whole class");
    private final DesignedBlank design;
    private final CardHead head;
    private final Optional<BatchPlan> plan;
    private final List<Served> served = new ArrayList<>();
    private final Optional<Integer> first;
    private final Cards maker;
    private final Map<String, Text> fields = new LinkedHashMap<>();
    private Combo each;

    private CardDialog(Shell shell, Workshop workshop, DesignedBlank design, CardHead head, Optional<BatchPlan> plan, Optional<Integer> first) {
        super(shell, workshop, "Bench card");
        this.design = design;
        this.head = head;
        this.plan = plan;
        this.first = first;
        this.maker = new Cards(design.limits(), workshop.rules());
        plan.ifPresent(p -> p.settings().forEach(s -> served.addAll(s.staples())));
    }

    /**
     * The cards of a design as it stands in its file.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param file the design's file
     * @param design the design
     * @param plan a batch split for it; empty for one card of the design
     * @param setting which setting is shown first, from 0
     * @return the dialog, not open yet
     */
    public static CardDialog of(Shell shell, Workshop workshop, Path file, DesignedBlank design, Optional<BatchPlan> plan, Optional<Integer> setting) {
        return new CardDialog(shell, workshop, design, head(file, design), plan, setting);
    }

    /**
     * The card of a design that is open, with its changes that are not saved.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param document the design's document
     * @param file its file
     * @param studio its studio
     * @param design the same as it is computed
     * @return the dialog, not open yet
     * @throws FileProblemException when a linked part cannot be found
     */
    public static CardDialog of(Shell shell, Workshop workshop, Design document, Path file, Studio studio, DesignedBlank design) throws FileProblemException {
        return new CardDialog(shell, workshop, design, DesignHead.of(document, file, studio), Optional.empty(), Optional.empty());
    }

    /** The parts' names; where they cannot be read the card has lines to write on. */
    private static CardHead head(Path file, DesignedBlank design) {
        try {
            Studio studio = Studio.around(file, new ModelFiles());
            return DesignHead.of(studio.files().load(file, studio.shown(file), Design.class).document(), file, studio);
        } catch (FileProblemException e) {
            return CardHead.of(design.name());
        }
    }

    @Override
    void ask(Composite area) {
        if (plan.isPresent()) {
            new Label(area, SWT.NONE).setText("a card for");
            each = new Combo(area, SWT.READ_ONLY);
            each.setItems(EACH.toArray(String[]::new));
            each.select(0);
            each.setData("culm.ask", "each");
            each.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
            each.addListener(SWT.Selection, e -> go(0));
        }
        text(area, "for", "made for", head.madeFor(), "who will play it");
        if (plan.isEmpty()) {
            text(area, "number", "blank no.", head.blankNumber(), "as on the blank");
            text(area, "staple", "staple", head.staple(), "");
        }
        text(area, "instrument", "instrument", head.instrument(), "");
        text(area, "cane", "cane batch", head.caneBatch(), "");
        text(area, "shape", "shape", head.shape(), "");
        text(area, "thread", "thread", head.thread(), "");
        text(area, "ends", "ends of the cane", head.ends(), "plain or thinned");
        Label hint = new Label(area, SWT.WRAP);
        hint.setText("What is left empty becomes a line to write on.");
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
        wide.widthHint = 270;
        hint.setLayoutData(wide);
        first.ifPresent(this::goFirst);
    }

    private void goFirst(int setting) {
        go(setting);
    }

    private void text(Composite area, String id, String words, String value, String hint) {
        new Label(area, SWT.NONE).setText(words);
        Text text = new Text(area, SWT.BORDER);
        text.setData("culm.ask", id);
        text.setMessage(hint);
        text.setText(value);
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        text.addListener(SWT.Modify, e -> changed());
        fields.put(id, text);
    }

    private String typed(String id) {
        return fields.containsKey(id) ? fields.get(id).getText().strip() : "";
    }

    private CardHead typed() {
        return new CardHead(head.design(), typed("for"), typed("instrument"), typed("number"), typed("staple"), typed("cane"), typed("shape"), typed("thread"), typed("ends"));
    }

    @Override
    int count() {
        if (plan.isEmpty()) {
            return 1;
        }
        return switch (each.getSelectionIndex()) {
            case 1 -> served.size();
            case 2 -> 1;
            default -> plan.get().settings().size();
        };
    }

    @Override
    Drawing page(int number, Paper on) {
        return CardPage.draw(card(number), on, ShippedFont.load());
    }

    private Card card(int number) {
        CardHead typed = typed();
        if (plan.isEmpty()) {
            return maker.of(design.blank(), typed);
        }
        return switch (each.getSelectionIndex()) {
            case 1 -> maker.ofStaple(design.blank(), plan.get(), served.get(number), typed);
            case 2 -> maker.forClass(design.blank(), plan.get(), typed);
            default -> maker.ofSetting(design.blank(), plan.get(), number, typed);
        };
    }

    @Override
    String fileName() {
        return "card " + head.design();
    }
}
