package culm.cli.internal;

import java.util.List;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

import culm.cli.Commands;
import culm.cli.Terminal;
import culm.extensions.Extensions;

/** The command line as an application of the product: {@code -application culm.cli.app}. */
public final class Headless implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		Terminal terminal = Terminal.ofProcess();
		int code = Commands.shipped(Extensions.start()).run(List.of(arguments), terminal);
		terminal.flush();
		return code;
	}

	@Override
	public void stop() {
		// A command runs on the thread that called start, and ends with it.
	}
}
