package culm.extensions;

import java.util.Optional;

/**
 * A file in the folder of plug-ins, and what became of it.
 *
 * @param file    its name
 * @param plugIn  what it says it is; empty when it cannot be told
 * @param problem why it is not in use, one sentence; empty when it is
 */
public record PlugInJar(String file, Optional<PlugIn> plugIn, Optional<String> problem) {
}
