// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;

class AnswerCacheTest {

  private final HazardNames.AnswerCache cache = new HazardNames.AnswerCache();
  private final AtomicInteger worked = new AtomicInteger();

  private List<NamedHazard> work(Material material) {
    worked.incrementAndGet();
    return HazardNames.ofName(material.id());
  }

  private static Material material(String id) {
    return Material.builder(id).build();
  }

  @Test
  void answer_isWorkedOutOnceForAMaterial() {
    Material jar = material("mennige");
    List<NamedHazard> first = cache.get(jar, this::work);
    assertThat(cache.get(jar, this::work)).isSameAs(first);
    assertThat(worked).hasValue(1);
  }

  @Test
  void twoMaterialsOfOneId_haveTwoAnswers() {
    cache.get(material("mennige"), this::work);
    cache.get(material("mennige"), this::work);
    assertThat(worked).hasValue(2);
  }

  @Test
  void manyMaterials_pushOneAnotherOut_andAllAnswersAreRight() {
    List<Material> jars = new ArrayList<>();
    for (int i = 0; i < 3000; i++) {
      jars.add(material(i % 2 == 0 ? "mennige-" + i : "jar-" + i));
    }
    for (Material jar : jars) {
      assertThat(cache.get(jar, this::work).isEmpty()).isEqualTo(jar.id().startsWith("jar"));
    }
  }

  @Test
  void severalThreads_getTheSameAnswers() throws Exception {
    Material jar = material("mennige");
    Callable<String> ask = () -> cache.get(jar, this::work).get(0).hazard().id();
    ExecutorService threads = Executors.newFixedThreadPool(8);
    List<Future<String>> answers = threads.invokeAll(java.util.Collections.nCopies(500, ask));
    threads.shutdown();
    assertThat(threads.awaitTermination(30, TimeUnit.SECONDS)).isTrue();
    for (Future<String> answer : answers) {
      assertThat(answer.get()).isEqualTo("red-lead");
    }
  }
}
