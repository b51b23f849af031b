package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.Writer;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Rooms of mathematics decide with values; their English stands in {@code report.words} and {@code wording}. A literal of
 * three words is a sentence; what is joined by a plus sign is read as one.
 */
class WordlessTest {
    /** Told to programmers alone, where no input leads. */
    private static final Set<String> PROGRAMMING_ERRORS = Set.of("IllegalArgumentException", "IllegalStateException");

    /** Second argument: told to programmers alone. */
    private static final String NULL_CHECK = "Objects.requireNonNull";

    private static final int SENTENCE = 3;

    private static final Path MAIN =
            Path.of(System.getProperty("bindprep.root"), "bind-prep-core/src/main/java/io/bindprep");

    @ParameterizedTest
    @ValueSource(strings = {"binding", "block", "marks", "paper", "run", "volume"})
    void aRoomOfMathematicsHasNoSentence(String room) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(MAIN.resolve(room))) {
            List<Path> sources =
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
            assertThat(sources).hasSizeGreaterThan(2);
            for (Path source : sources) {
                sentences(Files.readString(source)).forEach(s -> found.add(source.getFileName() + ": " + s));
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void sentencesAreFoundAndOnlyThese() throws IOException {
        assertThat(sentences("""
                class Sample {
                    String sentence(int n) { return "pull pins " + n + (n > 1 ? " too" : "") + ", for the gap"; }
                    String branch(int n) { return n > 0 ? "it does not go" : "no"; }
                    String words = "W3_1i-square-0t" + " of " + "paper" + '.';
                    Object programmer() { throw new IllegalStateException("a page was not looked at"); }
                    Object missing(Object o) { return Objects.requireNonNull(o, "the depth was chosen"); }
                    Object reader() { throw new SettingException("depth", "no depth is known"); }
                }
                """)).containsExactly("pull pins ~~, for the gap", "it does not go", "no depth is known");
    }

    private static List<String> sentences(String source) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        SimpleJavaFileObject file =
                new SimpleJavaFileObject(URI.create("string:///Source.java"), SimpleJavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        JavacTask task = (JavacTask)
                compiler.getTask(Writer.nullWriter(), null, null, List.of("-proc:none"), null, List.of(file));
        Finder finder = new Finder();
        finder.scan(task.parse(), null);
        return finder.found;
    }

    private static final class Finder extends TreeScanner<@Nullable Void, @Nullable Void> {
        private final List<String> found = new ArrayList<>();

        @Override
        public @Nullable Void visitBinary(BinaryTree tree, @Nullable Void none) {
            if (tree.getKind() != Tree.Kind.PLUS) {
                return super.visitBinary(tree, none);
            }
            StringBuilder whole = new StringBuilder();
            join(tree, whole);
            look(whole.toString());
            return null;
        }

        private void join(ExpressionTree tree, StringBuilder whole) {
            if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
                join(sum.getLeftOperand(), whole);
                join(sum.getRightOperand(), whole);
            } else if (tree instanceof ParenthesizedTree within) {
                join(within.getExpression(), whole);
            } else if (tree instanceof LiteralTree literal) {
                whole.append(literal.getValue());
            } else {
                whole.append('~');
                scan(tree, null);
            }
        }

        @Override
        public @Nullable Void visitLiteral(LiteralTree tree, @Nullable Void none) {
            if (tree.getValue() instanceof String text) {
                look(text);
            }
            return null;
        }

        @Override
        public @Nullable Void visitNewClass(NewClassTree tree, @Nullable Void none) {
            return PROGRAMMING_ERRORS.contains(tree.getIdentifier().toString())
                    ? null
                    : super.visitNewClass(tree, none);
        }

        @Override
        public @Nullable Void visitMethodInvocation(MethodInvocationTree tree, @Nullable Void none) {
            return tree.getMethodSelect().toString().equals(NULL_CHECK)
                    ? scan(tree.getArguments().get(0), none)
                    : super.visitMethodInvocation(tree, none);
        }

        private void look(String text) {
            long words = Arrays.stream(text.split("[\\s~]+"))
                    .filter(w -> w.matches("[\"(]?\\p{L}[\\p{L}'-]*[\",;:.)?]*"))
                    .count();
            if (words >= SENTENCE) {
                found.add(text);
            }
        }
    }
}
