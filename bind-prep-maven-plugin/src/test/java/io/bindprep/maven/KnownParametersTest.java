package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import org.apache.maven.model.Build;
import org.apache.maven.model.Plugin;
import org.apache.maven.model.PluginExecution;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.descriptor.MojoDescriptor;
import org.apache.maven.plugin.descriptor.Parameter;
import org.apache.maven.plugin.descriptor.PluginDescriptor;
import org.apache.maven.project.MavenProject;
import org.codehaus.plexus.util.xml.Xpp3Dom;
import org.codehaus.plexus.util.xml.Xpp3DomBuilder;
import org.junit.jupiter.api.Test;

class KnownParametersTest {
    @Test
    void aMisspeltOneIsAnErrorWithTheNearestName() {
        assertThatThrownBy(() -> check("<failon>warning</failon>", ""))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("<failon>: the plugin has no such parameter")
                .hasMessageContaining("Did you mean <failOn>?");
        assertThatThrownBy(() -> check("", "<job/><formts>json</formts>"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("Did you mean <formats>?");
        assertThatThrownBy(() -> check("<somethingElse/>", ""))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("bind-prep:help")
                .hasMessageNotContaining("Did you mean");
    }

    @Test
    void whatAnotherGoalKnowsMayStandInASharedConfiguration() {
        assertThatCode(() -> check("<paper>letter</paper><failOn>never</failOn>", "<formats>json</formats>"))
                .doesNotThrowAnyException();
        assertThatCode(() -> check("", "")).doesNotThrowAnyException();
    }

    @Test
    void anExecutionWithoutAPomHasNothingToSay() throws Exception {
        MojoExecution execution = new MojoExecution(descriptor());
        assertThatCode(() -> KnownParameters.check(execution, null)).doesNotThrowAnyException();
    }

    @Test
    void whatAnotherExecutionSaysIsItsOwn() throws Exception {
        Plugin plugin = plugin("", "");
        plugin.addExecution(execution("another", "<failon/>"));
        assertThatCode(() -> check(plugin)).doesNotThrowAnyException();
    }

    private static void check(String ofPlugin, String ofExecution) throws Exception {
        check(plugin(ofPlugin, ofExecution));
    }

    private static void check(Plugin plugin) throws Exception {
        MojoExecution execution = new MojoExecution(plugin, "check", "gate");
        execution.setMojoDescriptor(descriptor());
        MavenProject project = new MavenProject();
        project.setBuild(new Build());
        project.getBuild().addPlugin(plugin);
        KnownParameters.check(execution, project);
    }

    private static Plugin plugin(String ofPlugin, String ofExecution) throws Exception {
        Plugin plugin = new Plugin();
        plugin.setGroupId("io.bindprep");
        plugin.setArtifactId("bind-prep-maven-plugin");
        plugin.setConfiguration(dom(ofPlugin));
        plugin.addExecution(execution("gate", ofExecution));
        return plugin;
    }

    private static PluginExecution execution(String id, String configuration) throws Exception {
        PluginExecution execution = new PluginExecution();
        execution.setId(id);
        execution.setConfiguration(dom(configuration));
        return execution;
    }

    private static Xpp3Dom dom(String children) throws Exception {
        return Xpp3DomBuilder.build(new StringReader("<configuration>" + children + "</configuration>"));
    }

    private static MojoDescriptor descriptor() throws Exception {
        PluginDescriptor plugin = new PluginDescriptor();
        plugin.setGroupId("io.bindprep");
        plugin.setArtifactId("bind-prep-maven-plugin");
        MojoDescriptor check = goal(plugin, "check", "formats", "failOn", "job");
        goal(plugin, "spec", "paper", "failOn", "job");
        return check;
    }

    private static MojoDescriptor goal(PluginDescriptor plugin, String name, String... parameters) throws Exception {
        MojoDescriptor goal = new MojoDescriptor();
        goal.setGoal(name);
        goal.setPluginDescriptor(plugin);
        for (String parameter : List.of(parameters)) {
            Parameter one = new Parameter();
            one.setName(parameter);
            goal.addParameter(one);
        }
        plugin.addMojo(goal);
        return goal;
    }
}
