package culm.workbench.internal.explore;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import culm.explore.VariantPlan;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** Which combinations are tried, and the run of them. */
public final class PlanBar extends Composite {
    private static final String EACH = "every combination";
    private static final String ONE = "one at a time";
    private static final String SAMPLE = "an even sample of";
    private final Combo how;
    private final Text count;
    private final RunBar bar;

    PlanBar(Composite parent, Look look) {
        super(parent, SWT.NONE);
        look.dress(this, Role.PAPER, Role.INK);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        how = new Combo(this, SWT.READ_ONLY);
        how.setFont(look.font(Size.BODY, SWT.NORMAL));
        how.setItems(EACH, ONE, SAMPLE);
        how.select(0);
        how.setData("culm.explore", "plan");
        count = new Text(this, SWT.BORDER | SWT.RIGHT);
        count.setFont(look.font(Size.BODY, SWT.NORMAL));
        count.setText("1000");
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = 64;
        data.exclude = true;
        count.setLayoutData(data);
        count.setVisible(false);
        how.addListener(SWT.Selection, e -> choose(how.getSelectionIndex()));
        bar = new RunBar(this, look);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    }

    /** Chooses a plan: 0 every combination, 1 one at a time, 2 an even sample. */
    public void choose(int plan) {
        how.select(plan);
        boolean sample = plan == 2;
        ((GridData) count.getLayoutData()).exclude = !sample;
        count.setVisible(sample);
        layout();
    }

    /** How many the even sample has. */
    public void count(String text) {
        count.setText(text);
    }

    RunBar bar() {
        return bar;
    }

    /** {@return the plan} @throws IllegalArgumentException when the sample's number is none */
    VariantPlan plan() {
        return switch (how.getSelectionIndex()) {
            case 1 -> new VariantPlan.OneAtATime();
            case 2 -> new VariantPlan.Sample((int) Whole.read("The sample", count.getText(), 1, 100_000_000));
            default -> new VariantPlan.Grid();
        };
    }
}
