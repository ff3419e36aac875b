// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Every public element is described, each parameter, result and checked exception with it. A record
 * describes its components once: what its compact constructor takes is not said again.
 */
class DocumentedTest {

  private final List<String> missing = new ArrayList<>();
  private int seen;

  @Test
  void every_public_element_is_described() throws IOException {
    List<Path> files = CompiledExamples.files(List.of("units", "core", "safety", "examples"));
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Described(docs).scan(unit, null);
      }
    }
    assertThat(missing).isEmpty();
    assertThat(seen).isGreaterThan(3_000);
  }

  /** Walks what can be seen from outside. */
  private final class Described extends TreePathScanner<Void, Void> {

    private final DocTrees docs;

    Described(DocTrees docs) {
      this.docs = docs;
    }

    @Override
    public Void visitClass(ClassTree type, Void none) {
      if (!isSeen(type.getModifiers())) {
        return null;
      }
      DocCommentTree doc = described(type.getSimpleName().toString());
      type.getTypeParameters().forEach(p -> isTold(doc, p.getName().toString(), true));
      if (type.getKind() == Kind.RECORD) {
        components(type).forEach(c -> isTold(doc, c.getName().toString(), false));
      }
      return super.visitClass(type, none);
    }

    @Override
    public Void visitMethod(MethodTree method, Void none) {
      ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
      if (!isSeen(method.getModifiers()) || isOverride(method) || isCompact(method, owner)) {
        return null;
      }
      DocCommentTree doc = described(owner.getSimpleName() + "#" + method.getName());
      method.getParameters().forEach(p -> isTold(doc, p.getName().toString(), false));
      method.getTypeParameters().forEach(p -> isTold(doc, p.getName().toString(), true));
      Tree gives = method.getReturnType();
      if (gives != null && !gives.toString().equals("void")) {
        check(tags(doc).anyMatch(ReturnTree.class::isInstance), "@return");
      }
      if (!method.getThrows().isEmpty()) {
        check(tags(doc).anyMatch(ThrowsTree.class::isInstance), "@throws");
      }
      return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Void none) {
      ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
      if (isSeen(field.getModifiers())) {
        described(owner.getSimpleName() + "#" + field.getName());
      }
      return null;
    }

    private boolean isSeen(ModifiersTree modifiers) {
      Tree owner = getCurrentPath().getParentPath().getLeaf();
      return owner.getKind() == Kind.INTERFACE
          || modifiers.getFlags().contains(Modifier.PUBLIC)
          || modifiers.getFlags().contains(Modifier.PROTECTED);
    }

    private static boolean isOverride(MethodTree method) {
      return method.getModifiers().getAnnotations().stream()
          .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
    }

    /** Whether it is the constructor of a record that takes its components. */
    private static boolean isCompact(MethodTree method, ClassTree owner) {
      return owner.getKind() == Kind.RECORD
          && method.getName().contentEquals("<init>")
          && names(method.getParameters().stream()).equals(names(components(owner)));
    }

    private static List<String> names(Stream<? extends VariableTree> variables) {
      return variables.map(v -> v.getName().toString()).toList();
    }

    private static Stream<VariableTree> components(ClassTree record) {
      return record.getMembers().stream()
          .filter(VariableTree.class::isInstance)
          .map(VariableTree.class::cast)
          .filter(m -> !m.getModifiers().getFlags().contains(Modifier.STATIC));
    }

    private DocCommentTree described(String name) {
      DocCommentTree doc = docs.getDocCommentTree(getCurrentPath());
      seen++;
      check(doc != null && !(doc.getFullBody().isEmpty() && tags(doc).findAny().isEmpty()), name);
      return doc;
    }

    private void isTold(DocCommentTree doc, String parameter, boolean isType) {
      check(
          tags(doc)
              .filter(ParamTree.class::isInstance)
              .map(ParamTree.class::cast)
              .filter(p -> p.isTypeParameter() == isType)
              .anyMatch(p -> p.getName().toString().equals(parameter)),
          parameter);
    }

    private Stream<DocTree> tags(DocCommentTree doc) {
      return doc == null
          ? Stream.of()
          : Stream.concat(doc.getFullBody().stream(), doc.getBlockTags().stream());
    }

    private void check(boolean isThere, String what) {
      if (!isThere) {
        TreePath path = getCurrentPath();
        missing.add(path.getCompilationUnit().getSourceFile().getName() + ": " + what);
      }
    }
  }
}
