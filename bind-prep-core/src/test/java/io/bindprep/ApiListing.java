package io.bindprep;

import java.lang.reflect.AnnotatedArrayType;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.AnnotatedTypeVariable;
import java.lang.reflect.AnnotatedWildcardType;
import java.lang.reflect.Executable;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.TypeVariable;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Types that callers compile against, in words: every public type of ours that is met from some to begin with, with what it is,
 * its constants, components, fields, constructors and methods, what may be null and what is thrown. Sorted, so that a
 * change of the code moves only its own lines.
 */
final class ApiListing {
    private static final String OURS = "io.bindprep.";

    private final Set<Class<?>> met = new HashSet<>();
    private final Deque<Class<?>> unchecked = new ArrayDeque<>();

    private final Map<String, String> texts = new TreeMap<>();
    private final Predicate<Class<?>> promised;

    private ApiListing(Predicate<Class<?>> promised) {
        this.promised = promised;
    }

    /** Lists what is met from these, but for types that are not promised. */
    static ApiListing of(Collection<Class<?>> waysIn, Predicate<Class<?>> promised) {
        ApiListing listing = new ApiListing(promised);
        waysIn.forEach(listing::meet);
        while (!listing.unchecked.isEmpty()) {
            Class<?> type = listing.unchecked.pop();
            listing.texts.put(type.getName(), listing.text(type));
        }
        return listing;
    }

    Set<String> types() {
        return texts.keySet();
    }

    String text() {
        return String.join("\n", texts.values());
    }

    private void meet(Class<?> type) {
        if (type.isArray()) {
            meet(type.getComponentType());
        } else if (type.getName().startsWith(OURS)
                && Modifier.isPublic(type.getModifiers())
                && promised.test(type)
                && met.add(type)) {
            unchecked.add(type);
        }
    }

    private String text(Class<?> type) {
        Stream.of(type.getDeclaredClasses()).forEach(this::meet);
        StringBuilder text = new StringBuilder(head(type)).append('\n');
        if (type.isEnum()) {
            // in their order, which is how they compare
            Stream.of(type.getEnumConstants())
                    .forEach(c -> text.append("  ").append(((Enum<?>) c).name()).append('\n'));
        }
        Stream.of(fields(type), constructors(type), methods(type))
                .flatMap(Stream::sorted)
                .forEach(line -> text.append("  ").append(line).append('\n'));
        return text.toString();
    }

    private String head(Class<?> type) {
        List<AnnotatedType> above = new ArrayList<>(List.of(type.getAnnotatedInterfaces()));
        Class<?> parent = type.getSuperclass();
        if (parent != null && parent != Object.class && parent != Record.class && !type.isEnum()) {
            above.add(0, type.getAnnotatedSuperclass());
        }
        if (type.isSealed()) {
            Stream.of(type.getPermittedSubclasses()).forEach(this::meet);
        }
        String components = type.isRecord()
                ? listed(
                        "(", ", ", ")", type.getRecordComponents(), c -> name(c.getAnnotatedType()) + " " + c.getName())
                : "";
        // an enum whose constants have bodies is sealed by the compiler, no affair of a caller's
        return (type.isSealed() && !type.isEnum() ? "sealed " : "")
                + modifiers(type.getModifiers(), type.isInterface() || type.isRecord() || type.isEnum())
                + kind(type)
                + " "
                + type.getName()
                + variables(type.getTypeParameters()).strip()
                + components
                + listed(" : ", ", ", "", above.toArray(AnnotatedType[]::new), this::name);
    }

    private static String kind(Class<?> type) {
        return type.isRecord() ? "record" : type.isEnum() ? "enum" : type.isInterface() ? "interface" : "class";
    }

    private Stream<String> fields(Class<?> type) {
        return Stream.of(type.getDeclaredFields())
                .filter(f -> shown(f) && !f.isEnumConstant())
                .map(f -> modifiers(f.getModifiers(), false) + name(f.getAnnotatedType()) + " " + f.getName());
    }

    /** The one that the components of a record say is left out. */
    private Stream<String> constructors(Class<?> type) {
        Class<?>[] components = type.isRecord()
                ? Stream.of(type.getRecordComponents())
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new)
                : null;
        return Stream.of(type.getDeclaredConstructors())
                .filter(c -> shown(c) && !Arrays.equals(c.getParameterTypes(), components))
                .map(c -> "new" + variables(c.getTypeParameters()) + parameters(c));
    }

    /** Accessors of records and what every object or enum has are left out. */
    private Stream<String> methods(Class<?> type) {
        return Stream.of(type.getDeclaredMethods())
                .filter(m -> shown(m) && !m.isSynthetic() && !isOfEveryObject(m) && !isOfEveryEnum(m) && !isAccessor(m))
                .map(m -> modifiers(m.getModifiers(), type.isInterface())
                        + (m.isDefault() ? "default " : "")
                        + variables(m.getTypeParameters())
                        + name(m.getAnnotatedReturnType())
                        + " "
                        + m.getName()
                        + parameters(m));
    }

    private static boolean shown(Member member) {
        return Modifier.isPublic(member.getModifiers())
                || Modifier.isProtected(member.getModifiers())
                        && !Modifier.isFinal(member.getDeclaringClass().getModifiers());
    }

    private static boolean isOfEveryObject(Method m) {
        return Set.of("toString", "hashCode", "equals").contains(m.getName())
                && m.getParameterCount() == (m.getName().equals("equals") ? 1 : 0);
    }

    private static boolean isOfEveryEnum(Method m) {
        return m.getDeclaringClass().isEnum()
                && (m.getName().equals("values") && m.getParameterCount() == 0
                        || m.getName().equals("valueOf") && Modifier.isStatic(m.getModifiers()));
    }

    private static boolean isAccessor(Method m) {
        RecordComponent[] components = m.getDeclaringClass().getRecordComponents();
        return components != null
                && Stream.of(components).anyMatch(c -> c.getAccessor().equals(m));
    }

    private static String modifiers(int modifiers, boolean plain) {
        return (Modifier.isStatic(modifiers) && !plain ? "static " : "")
                + (Modifier.isAbstract(modifiers) && !plain ? "abstract " : "")
                + (Modifier.isFinal(modifiers) && !plain ? "final " : "");
    }

    private String parameters(Executable e) {
        java.lang.reflect.Parameter[] parameters = e.getParameters();
        AnnotatedType[] types = e.getAnnotatedParameterTypes();
        List<String> each = new ArrayList<>();
        for (int i = 0; i < types.length; i++) {
            String name = name(types[i]);
            boolean many = e.isVarArgs() && i == types.length - 1;
            each.add((many ? name.substring(0, name.length() - 2) + "..." : name) + " " + parameters[i].getName());
        }
        return "(" + String.join(", ", each) + ")"
                + listed(" throws ", ", ", "", e.getAnnotatedExceptionTypes(), this::name);
    }

    private String variables(TypeVariable<?>[] variables) {
        return listed("<", ", ", "> ", variables, v -> {
            Stream.of(v.getAnnotatedBounds()).forEach(this::name);
            return v.getName()
                    + listed(" extends ", " & ", "", v.getAnnotatedBounds(), this::name)
                            .replaceFirst("^ extends Object$", "");
        });
    }

    private static <T> String listed(String open, String between, String close, T[] items, Function<T, String> name) {
        return items.length == 0 ? "" : Stream.of(items).map(name).collect(Collectors.joining(between, open, close));
    }

    /** A type as a caller writes it, without the packages of the JDK; ours are met. */
    private String name(AnnotatedType type) {
        String mayBeNull = type.isAnnotationPresent(Nullable.class) ? "@Nullable " : "";
        if (type instanceof AnnotatedArrayType array) {
            return name(array.getAnnotatedGenericComponentType()) + (mayBeNull.isEmpty() ? "[]" : " @Nullable[]");
        }
        if (type instanceof AnnotatedWildcardType any) {
            AnnotatedType[] lower = any.getAnnotatedLowerBounds();
            AnnotatedType[] bounds = lower.length > 0 ? lower : any.getAnnotatedUpperBounds();
            String bound = listed(lower.length > 0 ? " super " : " extends ", " & ", "", bounds, this::name);
            return "?" + (bound.equals(" extends Object") ? "" : bound);
        }
        if (type instanceof AnnotatedParameterizedType with) {
            Class<?> raw = (Class<?>) ((ParameterizedType) with.getType()).getRawType();
            return mayBeNull + name(raw) + listed("<", ", ", ">", with.getAnnotatedActualTypeArguments(), this::name);
        }
        if (type instanceof AnnotatedTypeVariable) {
            return mayBeNull + type.getType().getTypeName();
        }
        return mayBeNull + name((Class<?>) type.getType());
    }

    private String name(Class<?> type) {
        meet(type);
        return type.getName().startsWith("java.") ? type.getSimpleName() : type.getName();
    }
}
