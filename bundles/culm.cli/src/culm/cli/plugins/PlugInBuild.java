package culm.cli.plugins;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;

/**
 * Builds a plug-in project: {@code src} compiled, {@code test} compiled and run with the test kit, a jar of the classes, {@code plugin.xml} and
 * whatever else lies in {@code src}, put into the folder of plug-ins. Everything made on the way is in the project's folder {@code build}.
 *
 * @param home    the folder of the program to build against, with its plugins and its plug-in-kit
 * @param plugIns the folder of plug-ins
 */
public record PlugInBuild(Path home, Path plugIns) {
    private static final String MANIFEST = "META-INF/MANIFEST.MF";
    private static final String LIBRARIES = "(culm\\.geometry|culm\\.blank|org\\.hipparchus\\..*)_.*\\.jar";
    private static final String RUNNER = "junit-platform-console-standalone.*";

    private List<Path> libraries() throws IOException {
        return files(home.resolve("plugins")).stream().filter(j -> j.getFileName().toString().matches(LIBRARIES)).toList();
    }

    private List<Path> kit() throws IOException {
        return files(home.resolve("plug-in-kit")).stream().filter(j -> j.getFileName().toString().endsWith(".jar")).toList();
    }

    /** @return an exit code; what was built is told on the terminal */
    public int run(Path project, boolean tests, Terminal terminal) throws CommandException {
        try {
            String id = id(project);
            Path build = project.resolve("build");
            Path classes = compiled(project, "src", build.resolve("classes"), libraries());
            if (tests && Files.isDirectory(project.resolve("test")) && !tested(project, build, classes, terminal)) {
                throw CommandException.unreadable(project + ": its tests fail, so it was not installed");
            }
            Path jar = packed(project, classes, build.resolve(id + ".jar"));
            Files.createDirectories(plugIns);
            Path beside = Files.copy(jar, plugIns.resolve(id + ".jar.new"), StandardCopyOption.REPLACE_EXISTING);
            Path installed = Files.move(beside, plugIns.resolve(id + ".jar"), StandardCopyOption.REPLACE_EXISTING);
            terminal.out().println("installed " + installed);
            terminal.out().println("Start Culm anew to use it; culm plug-ins lists what it brings.");
            return ExitCode.FINE;
        } catch (IOException e) {
            throw CommandException.unreadable(project + ": it cannot be built (" + e.getMessage() + ")");
        }
    }

    private static String id(Path project) throws CommandException, IOException {
        if (!Files.isRegularFile(project.resolve(MANIFEST)) || !Files.isRegularFile(project.resolve("plugin.xml"))) {
            throw CommandException.unreadable(project + ": this is no plug-in project; it needs " + MANIFEST + " and plugin.xml");
        }
        String name = manifest(project).getMainAttributes().getValue("Bundle-SymbolicName");
        if (name == null || name.isBlank()) {
            throw CommandException.unreadable(project.resolve(MANIFEST) + ": it has no Bundle-SymbolicName");
        }
        return name.split(";")[0].strip();
    }

    private static Manifest manifest(Path project) throws IOException {
        try (InputStream in = Files.newInputStream(project.resolve(MANIFEST))) {
            return new Manifest(in);
        }
    }

    private static Path compiled(Path project, String folder, Path into, List<Path> with) throws IOException, CommandException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        if (compiler == null) {
            throw CommandException.unreadable("building a plug-in needs a Java development kit, and this Java is only for running; on Debian the package is openjdk-17-jdk-headless");
        }
        emptied(into);
        List<Path> sources = files(project.resolve(folder)).stream().filter(f -> f.toString().endsWith(".java")).toList();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        StringWriter rest = new StringWriter();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(found, null, null)) {
            boolean done = compiler.getTask(rest, manager, found, List.of("--release", "17", "-encoding", "UTF-8", "-proc:none", "-classpath", path(with),
                    "-d", into.toString()), null, manager.getJavaFileObjectsFromPaths(sources)).call();
            if (!done) {
                throw CommandException.unreadable(found.getDiagnostics().stream().filter(d -> d.getKind() == javax.tools.Diagnostic.Kind.ERROR)
                        .map(d -> (d.getSource() == null ? folder : project.relativize(Path.of(d.getSource().toUri()))) + ", line " + d.getLineNumber() + ": "
                                + d.getMessage(null).replaceAll("\\s+", " ")).collect(Collectors.joining("\n")) + rest);
            }
        }
        return into;
    }

    private boolean tested(Path project, Path build, Path classes, Terminal terminal) throws IOException, CommandException {
        Path runner = kit().stream().filter(j -> j.getFileName().toString().matches(RUNNER)).findFirst()
                .orElseThrow(() -> CommandException.unreadable("the test kit is not beside the program; build with --no-tests"));
        List<Path> with = new ArrayList<>(libraries());
        with.addAll(kit());
        with.add(classes);
        Path testClasses = compiled(project, "test", build.resolve("test-classes"), with);
        with.add(testClasses);
        Path log = build.resolve("tests.txt");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-jar", runner.toString(),
                "execute", "--disable-banner", "--disable-ansi-colors", "--details=tree", "--class-path", path(with), "--scan-class-path", testClasses.toString())
                .directory(project.toFile()).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        try {
            int code = process.waitFor();
            List<String> said = Files.readAllLines(log);
            said.stream().filter(line -> code != 0 || line.contains("tests successful") || line.contains("tests failed")).forEach(terminal.out()::println);
            return code == 0;
        } catch (InterruptedException e) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    private static Path packed(Path project, Path classes, Path jar) throws IOException {
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest(project))) {
            add(out, project, project.resolve("plugin.xml"));
            for (Path file : files(classes)) {
                add(out, classes, file);
            }
            for (Path file : files(project.resolve("src"))) {
                if (!file.toString().endsWith(".java")) {
                    add(out, project.resolve("src"), file);
                }
            }
        }
        return jar;
    }

    private static void add(JarOutputStream out, Path root, Path file) throws IOException {
        out.putNextEntry(new ZipEntry(root.relativize(file).toString().replace(File.separatorChar, '/')));
        Files.copy(file, out);
        out.closeEntry();
    }

    private static void emptied(Path folder) throws IOException {
        for (Path file : files(folder)) {
            Files.delete(file);
        }
        Files.createDirectories(folder);
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static String path(List<Path> jars) {
        return jars.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }
}
