package culm.workbench.internal.history;

import java.util.Arrays;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import culm.figures.Role;
import culm.figures.Size;
import culm.history.Secrets;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.sharing.PaperDialog;

/** Asks for a server's login in a dialog; nothing of it is stored. */
record WindowSecrets(Shell shell, Look look) implements Secrets {
    @Override
    public Optional<Login> login(String address) {
        Optional<?>[] given = { Optional.empty() };
        look.display().syncExec(() -> given[0] = new Ask(shell, look, address).ask());
        return given[0].map(Login.class::cast);
    }

    private static final class Ask extends PaperDialog {
        private final String address;
        private Text user;
        private Text password;
        private Optional<Login> login = Optional.empty();

        Ask(Shell shell, Look look, String address) {
            super(shell, look, "Name and password", new Point(520, 260));
            this.address = address;
        }

        Optional<Login> ask() {
            open();
            return login;
        }

        @Override
        protected void fill(Composite area) {
            say(address + " asks who you are. Nothing of it is stored.", Role.INK);
            Composite asked = new Composite(area, SWT.NONE);
            asked.setLayout(new GridLayout(2, false));
            asked.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            look().dress(asked, Role.PAPER, Role.INK);
            user = text(asked, "name", SWT.BORDER);
            password = text(asked, "password", SWT.BORDER | SWT.PASSWORD);
        }

        private Text text(Composite parent, String words, int style) {
            Label label = new Label(parent, SWT.NONE);
            label.setText(words);
            label.setFont(look().font(Size.BODY, SWT.NORMAL));
            look().dress(label, Role.PAPER, Role.QUIET);
            Text text = new Text(parent, style);
            text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
            text.setData("culm.ask", words);
            return text;
        }

        @Override
        protected void okPressed() {
            char[] typed = password.getTextChars();
            login = Optional.of(new Login(user.getText().strip(), typed.clone()));
            Arrays.fill(typed, '\0');
            password.setText("");
            super.okPressed();
        }
    }
}
