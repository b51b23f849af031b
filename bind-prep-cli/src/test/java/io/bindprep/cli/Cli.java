package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.console.Terminal;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;

/** Answer of one run of the command, in this process. */
public record Cli(int exit, String out, String err) {
    static final Path ROOT = Path.of(System.getProperty("bindprep.root"));
    static final Terminal NONE = new Terminal(false, false, Map.of());

    public static Cli run(String... args) {
        return run(BindPrep::check, args);
    }

    public static Cli run(Engine engine, String... args) {
        return run(InputStream.nullInputStream(), engine, args);
    }

    static Cli run(InputStream in, Engine engine, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = new Main(in, new PrintWriter(out), new PrintWriter(err), NONE, engine).run(args);
        return new Cli(exit, out.toString(), err.toString());
    }

    public static String fixture(String name) {
        return ROOT.resolve("fixtures").resolve(name).toString();
    }
}
