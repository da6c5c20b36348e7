package culm.workbench.internal.plugins;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.extensions.Contribution;
import culm.extensions.Extensions;
import culm.extensions.PlugIn;
import culm.extensions.PlugInJar;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.PaperDialog;

/** Every plug-in with the kinds of staple, gouge and shape, the rules and the exports it brings, how they have behaved, and what is not in use and why. */
public final class PlugInsDialog extends PaperDialog {
    private static final Point SIZE = new Point(860, 620);
    private final Extensions extensions;
    private ScrolledComposite scroll;
    private Composite list;

    /**
     * The dialog.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     */
    public PlugInsDialog(Shell shell, Workshop workshop) {
        super(shell, workshop.look(), "Plug-ins", SIZE);
        this.extensions = workshop.extensions();
    }

    @Override
    protected void fill(Composite area) {
        String folder = System.getProperty(Extensions.FOLDER, "");
        say(folder.isBlank() ? "No folder of plug-ins is set." : "A plug-in is one jar in the folder " + folder + "; it is used from the next start on, and gone when it is taken away.", Role.INK);
        scroll = new ScrolledComposite(area, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.getVerticalBar().setIncrement(24);
        look().dress(scroll, Role.PAPER, Role.INK);
        list = new Composite(scroll, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.horizontalSpacing = 16;
        layout.verticalSpacing = 3;
        list.setLayout(layout);
        look().dress(list, Role.PAPER, Role.INK);
        fillList();
        scroll.setContent(list);
        scroll.addListener(SWT.Resize, e -> list.setSize(list.computeSize(Math.max(1, scroll.getClientArea().width), SWT.DEFAULT)));
    }

    private void fillList() {
        for (PlugInJar jar : extensions.jars()) {
            jar.problem().ifPresent(why -> wide(jar.file() + " is not in use. " + why, SWT.NORMAL, Role.DOES_NOT));
        }
        Map<PlugIn, List<Contribution>> all = new LinkedHashMap<>();
        extensions.contributions().stream().filter(c -> !c.plugIn().ships()).forEach(c -> all.computeIfAbsent(c.plugIn(), p -> new java.util.ArrayList<>()).add(c));
        extensions.contributions().stream().filter(c -> c.plugIn().ships()).forEach(c -> all.computeIfAbsent(c.plugIn(), p -> new java.util.ArrayList<>()).add(c));
        all.forEach(this::plugIn);
        for (PlugInJar jar : extensions.jars()) {
            if (jar.problem().isEmpty() && !all.containsKey(jar.plugIn().orElseThrow())) {
                wide(jar.file() + " brings nothing.", SWT.NORMAL, Role.QUIET);
            }
        }
    }

    private void plugIn(PlugIn plugIn, List<Contribution> brought) {
        String from = extensions.jars().stream().filter(j -> j.plugIn().filter(plugIn::equals).isPresent()).findFirst().map(j -> ", from " + j.file()).orElse("");
        Label name = wide(plugIn.ships() ? plugIn.name() + ", ships with Culm" : plugIn.said() + from, SWT.BOLD, Role.INK);
        ((GridData) name.getLayoutData()).verticalIndent = 10;
        for (Contribution c : brought) {
            cell(c.point().word(), Role.QUIET).setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
            cell(c.name(), Role.INK).setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
            Label id = cell(c.id(), Role.QUIET);
            id.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            Optional<String> trouble = c.failure().map(why -> "Not in use: " + why).or(() -> extensions.health(c).flatMap(h -> h.lastFailure().map(
                    last -> (h.stopped() ? "Stopped" : "Failed " + h.failures() + (h.failures() == 1 ? " time" : " times")) + " since the start: " + last)));
            trouble.ifPresent(sentence -> {
                Label said = wide(sentence, SWT.NORMAL, Role.DOES_NOT);
                ((GridData) said.getLayoutData()).horizontalIndent = 16;
            });
        }
    }

    private Label cell(String text, Role ink) {
        Label label = new Label(list, SWT.NONE);
        label.setText(text);
        label.setFont(look().font(Size.BODY, SWT.NORMAL));
        look().dress(label, Role.PAPER, ink);
        return label;
    }

    private Label wide(String text, int style, Role ink) {
        Label label = label(list, text, Size.BODY, style, ink);
        ((GridData) label.getLayoutData()).horizontalSpan = 3;
        return label;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Close", true);
    }
}
