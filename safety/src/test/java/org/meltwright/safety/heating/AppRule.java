// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.spi.ToolProvider;

/** The example rule of {@link HeatingRule} as an app brings it, compiled outside this library. */
final class AppRule {

  private static final String RULE =
      """
      package studio;
      import org.meltwright.core.source.Source;
      import org.meltwright.safety.heating.*;
      import org.meltwright.units.Limit;
      public class LongDay implements HeatingRule {
        final RuleInfo info =
            RuleInfo.of("long-day", Severity.NOTICE, RuleInfo.Topic.PLACE, Source.COMMON_PRACTICE);
        public RuleInfo info() { return info; }
        public RuleOutcome review(HeatingPlan plan) {
          return plan.hoursHeld().isEmpty()
              ? RuleOutcome.notAsked("hours-held")
              : RuleOutcome.foundIf(Limit.exceeds(plan.hoursHeld().getAsDouble(), 8));
        }
      }
      """;

  private static final Map<String, String> TEXTS =
      Map.of(
          "studio/messages_en.properties",
          "rule.long-day.summary=A long day.",
          "studio/messages_de.properties",
          "rule.long-day.summary=Ein langer Tag.");

  private static final Map<String, String> NO_TEXTS = Map.of();

  private AppRule() {}

  /** The rule of an app on the class path. */
  static HeatingRule onClassPath(Path folder, boolean withTexts) {
    compile(folder, RULE, "studio/LongDay.java", withTexts);
    try {
      return make(new URLClassLoader(new URL[] {folder.toUri().toURL()}));
    } catch (MalformedURLException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** The rule of an app that is a named module; it opens its package or not. */
  static HeatingRule onModulePath(Path folder, boolean withTexts, boolean isOpen) {
    compile(folder, RULE, "studio/LongDay.java", withTexts);
    String opens = isOpen ? "opens studio to org.meltwright.units; " : "";
    String module =
        "module studio { requires org.meltwright.safety; exports studio; " + opens + "}";
    compile(folder, module, "module-info.java", false);
    Configuration app =
        ModuleLayer.boot()
            .configuration()
            .resolve(ModuleFinder.of(folder), ModuleFinder.of(), Set.of("studio"));
    ClassLoader parent = AppRule.class.getClassLoader();
    return make(ModuleLayer.boot().defineModulesWithOneLoader(app, parent).findLoader("studio"));
  }

  private static HeatingRule make(ClassLoader loader) {
    try {
      Class<?> type = loader.loadClass("studio.LongDay");
      return (HeatingRule) type.getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void compile(Path folder, String source, String name, boolean withTexts) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, source);
      for (Map.Entry<String, String> text : (withTexts ? TEXTS : NO_TEXTS).entrySet()) {
        Files.writeString(folder.resolve(text.getKey()), text.getValue());
      }
      javac(folder, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void javac(Path folder, Path file) {
    String modules = System.getProperty("jdk.module.path", "");
    String classes = System.getProperty("java.class.path", "");
    boolean isModule = file.endsWith("module-info.java");
    List<String> libraries =
        isModule
            ? List.of("--module-path", modules)
            : List.of("-cp", modules + System.getProperty("path.separator") + classes);
    List<String> given = new java.util.ArrayList<>(libraries);
    given.addAll(List.of("-proc:none", "-d", folder.toString(), file.toString()));
    int failed =
        ToolProvider.findFirst("javac")
            .orElseThrow()
            .run(System.out, System.err, given.toArray(String[]::new));
    if (failed != 0) {
      throw new IllegalStateException("does not compile: " + file);
    }
  }
}
