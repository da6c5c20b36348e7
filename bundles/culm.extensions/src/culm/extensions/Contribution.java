package culm.extensions;

import java.util.Optional;

/**
 * One class that a plug-in offers, and what became of it.
 *
 * @param point     the extension point
 * @param id        its id as the plug-in declares it
 * @param className the class
 * @param name      what it calls itself on screen; its id when it could not be asked
 * @param plugIn    who offers it
 * @param failure   why it is not in use, one sentence; empty when it is
 */
public record Contribution(Point<?> point, String id, String className, String name, PlugIn plugIn, Optional<String> failure) {
}
