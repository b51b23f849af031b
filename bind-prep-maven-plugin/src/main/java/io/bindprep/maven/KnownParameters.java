package io.bindprep.maven;

import io.bindprep.wording.Spelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.apache.maven.model.ConfigurationContainer;
import org.apache.maven.model.Plugin;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.descriptor.MojoDescriptor;
import org.apache.maven.plugin.descriptor.Parameter;
import org.apache.maven.plugin.descriptor.PluginDescriptor;
import org.apache.maven.project.MavenProject;
import org.codehaus.plexus.util.xml.Xpp3Dom;
import org.jspecify.annotations.Nullable;

/**
 * Holds the names in a POM's configuration against the parameters that the goals have: Maven 3 drops a misspelt one in
 * silence, and a check that is set up wrong passes unseen. A name that another goal of the plugin knows is no mistake, as
 * several share a configuration.
 */
final class KnownParameters {
    private final Collection<String> names;

    KnownParameters(Collection<String> names) {
        this.names = new TreeSet<>(names);
    }

    /** Fails where the POM sets a parameter that no goal has. */
    static void check(MojoExecution execution, @Nullable MavenProject project) throws MojoExecutionException {
        PluginDescriptor descriptor = execution.getMojoDescriptor().getPluginDescriptor();
        Plugin plugin = project == null ? null : project.getPlugin(descriptor.getPluginLookupKey());
        if (plugin == null) {
            return;
        }
        List<String> names = new ArrayList<>();
        for (MojoDescriptor goal : descriptor.getMojos()) {
            for (Parameter parameter : goal.getParameters() == null ? List.<Parameter>of() : goal.getParameters()) {
                names.add(parameter.getName());
                if (parameter.getAlias() != null) {
                    names.add(parameter.getAlias());
                }
            }
        }
        KnownParameters known = new KnownParameters(names);
        // the execution's own configuration has lost what is not known by now, the model still has it
        known.check(plugin);
        ConfigurationContainer own = plugin.getExecutionsAsMap().get(execution.getExecutionId());
        if (own != null) {
            known.check(own);
        }
    }

    private void check(ConfigurationContainer container) throws MojoExecutionException {
        if (container.getConfiguration() instanceof Xpp3Dom configuration) {
            for (Xpp3Dom child : configuration.getChildren()) {
                String problem = problem(child.getName());
                if (problem != null) {
                    throw new MojoExecutionException(problem);
                }
            }
        }
    }

    /** A sentence about a name that no goal knows; null where one does. */
    @Nullable
    String problem(String name) {
        if (names.contains(name)) {
            return null;
        }
        String near = Spelling.nearest(name, names);
        return "<" + name + ">: the plugin has no such parameter\n  "
                + (near == null ? "" : "Did you mean <" + near + ">? ")
                + "mvn bind-prep:help -Ddetail lists all parameters.";
    }
}
