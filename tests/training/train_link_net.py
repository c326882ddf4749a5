#!/usr/bin/python3
"""Learns the net on links (core/systems/link_net.h) from lessons of write_lessons and writes its tables.

Objective: the chance that a weighted random forest falls into exactly the true systems, a ratio of two determinants
(core/systems/forest_matrix.h), by gradient descent (Adam, Kingma & Ba 2015 [memory]; one cycle of the learning rate).
A lesson may be seen in a mirror; turning it changes nothing.

Use:   train_link_net.py LESSONS.bin TABLES.txt [--epochs N] [--lessons N] [--leave-out KIND_NUMBER] [--check LESSONS.bin]
                         [--told] [--scores SCORES.bin]
--told:   the net is also told the kind of each field and the parameters that its generator drew, which nobody knows of a real field: what
          it then reaches is a ceiling for a net that is not told. Its tables fit no program.
--scores: the weights of links and roots of the --check lessons, for index_of_scores.
Needs: python3-torch, python3-numpy (libopenblas0-pthread makes it five times as fast). Used to make a resource only: neither the
       build nor the tests need it. Some seven minutes on one core for 2,100 lessons and seven epochs.
Then:  train_link_weights NETWORK.txt --net TABLES.txt --keep resources/link_weights.tsv --fields 400   (seeds the net has not seen)
"""
import argparse
import math
import random
import time

import numpy as np
import torch

MARK_INPUTS, LINK_INPUTS = 15, 31
HARMONICS, CHANNELS, STATE, MARK, HIDDEN, TRIANGLE, CROSSING, FELT = 5, 8, 24, 12, 32, 6, 4, 12
ROUNDS = 4
READ = HARMONICS * CHANNELS + 2 * CHANNELS + MARK + 3
LESSON_WORD = 0x504C5548
KINDS = 7
HARDLY_A_ROOT = 1e-6  # root weight that leaves one tree a part


def read_lessons(path, leave_out=(), most=10**9, told=False):
    words = np.memmap(path, dtype="<u4", mode="r")
    at = 0

    def take(count, kind):
        nonlocal at
        values = np.array(words[at:at + count]).view(kind)
        at += count
        return torch.tensor(values.astype(np.int64) if kind == "<i4" else values)

    lessons = []
    while at < len(words) and len(lessons) < most:
        word, kind, seed, wanted, n, m, triangles, crossings, window, parameters = (int(x) for x in take(10, "<i4"))
        assert word == LESSON_WORD, "not a file of lessons"
        truth = torch.cat([take(parameters, "<f4"), torch.nn.functional.one_hot(torch.tensor(kind), KINDS).float()])
        lesson = dict(
            kind=kind, seed=seed, wanted=wanted, n=n, m=m, system=take(n, "<i4"), of_mark=take(n * MARK_INPUTS, "<f4").view(n, -1), fan=take(n, "<f4"),
            has_fan=take(n, "<f4"), first=take(m, "<i4"), second=take(m, "<i4"), direction=take(m, "<f4"),
            of_link=take(m * LINK_INPUTS, "<f4").view(m, -1), surroundings=take(n * window, "<i4").view(n, window),
            triangles=take(3 * triangles, "<i4").view(-1, 3).T.int().contiguous(),
            crossings=take(2 * crossings, "<i4").view(-1, 2).T.int().contiguous())
        if told:
            lesson["of_mark"] = torch.cat([lesson["of_mark"], truth.expand(n, -1)], 1)
        if kind not in leave_out:
            lesson["parts"] = true_parts(lesson)
            lessons.append(lesson)
    return lessons


def true_parts(lesson):
    """Into how many parts the links within true systems join the marks."""
    parent = list(range(lesson["n"]))

    def find(i):
        while parent[i] != i:
            parent[i] = parent[parent[i]]
            i = parent[i]
        return i

    inside = lesson["system"][lesson["first"]] == lesson["system"][lesson["second"]]
    for a, b in zip(lesson["first"][inside].tolist(), lesson["second"][inside].tolist()):
        parent[find(a)] = find(b)
    return sum(1 for i in range(lesson["n"]) if find(i) == i)


def together(lessons):
    """Several lessons as one graph."""
    marks = np.cumsum([0] + [x["n"] for x in lessons])
    links = np.cumsum([0] + [x["m"] for x in lessons])
    batch = dict(n=int(marks[-1]), m=int(links[-1]), marks=marks, links=links, windows=[x["surroundings"] for x in lessons])
    for name in ("of_mark", "fan", "has_fan", "direction", "of_link"):
        batch[name] = torch.cat([x[name] for x in lessons])
    for name in ("first", "second"):
        batch[name] = torch.cat([x[name] + int(o) for x, o in zip(lessons, marks)])
    for name in ("triangles", "crossings"):
        batch[name] = torch.cat([x[name].long() + int(o) for x, o in zip(lessons, links)], 1)
    return batch


def mirrored(batch):
    return dict(batch, direction=-batch["direction"], fan=-batch["fan"])


class Round(torch.nn.Module):
    def __init__(self):
        super().__init__()
        self.say = torch.nn.Linear(STATE, 2 * CHANNELS)
        self.felt = torch.nn.Linear(4 * CHANNELS + MARK, FELT)
        self.mark = torch.nn.Linear(4 * CHANNELS + MARK + FELT, MARK)
        self.hear = torch.nn.Linear(STATE + 2 * READ + TRIANGLE + CROSSING, HIDDEN)
        self.out = torch.nn.Linear(HIDDEN, STATE)
        self.triangle = torch.nn.Linear(STATE, 2 * TRIANGLE)
        self.crossing = torch.nn.Linear(STATE, CROSSING)
        torch.nn.init.zeros_(self.out.weight)

    def forward(self, state, mark, batch, view):
        n, m, ends = batch["n"], batch["m"], view["ends"]
        said = self.say(state)
        value = torch.sigmoid(said[:, :CHANNELS]) * said[:, CHANNELS:]
        both = torch.cat([value, value])
        cos, sin = view["cos"], view["sin"]
        along = torch.einsum("ek,ec->ekc", cos, both).reshape(2 * m, -1)
        beside = torch.einsum("ek,ec->ekc", sin, both).reshape(2 * m, -1)
        x = torch.zeros(n, along.shape[1]).index_add(0, ends, along).view(n, HARMONICS, CHANNELS)
        y = torch.zeros(n, along.shape[1]).index_add(0, ends, beside).view(n, HARMONICS, CHANNELS)
        own = torch.cat([x[:, 0], view["fan2_cos"] * x[:, 2] + view["fan2_sin"] * y[:, 2],
                         view["fan_cos"] * x[:, 1] + view["fan_sin"] * y[:, 1], torch.sqrt(x[:, 2]**2 + y[:, 2]**2 + 1e-6), mark], 1)
        felt = torch.tanh(self.felt(own))
        about = torch.cat([felt[a:b][w].mean(1) for w, a, b in zip(batch["windows"], batch["marks"][:-1], batch["marks"][1:])])
        mark = torch.tanh(self.mark(torch.cat([own, about], 1)))
        gx, gy = x[ends], y[ends]
        forward = cos[:, :, None] * gx + sin[:, :, None] * gy - both[:, None, :]
        across = cos[:, 1:3, None] * gy[:, 1:3] - sin[:, 1:3, None] * gx[:, 1:3]
        read = torch.cat([forward.reshape(2 * m, -1), across.reshape(2 * m, -1), mark[ends], view["fan"]], 1)
        told = self.triangle(state)
        told = torch.sigmoid(told[:, :TRIANGLE]) * told[:, TRIANGLE:]
        t, c = batch["triangles"], batch["crossings"]
        around = torch.cat([torch.zeros(m, TRIANGLE).index_add(0, t[0], told[t[1]] * told[t[2]]),
                            torch.zeros(m, CROSSING).index_add(0, c[0], torch.sigmoid(self.crossing(state))[c[1]])], 1)
        w = self.hear.weight
        base = state @ w[:, :STATE].T + self.hear.bias + around @ w[:, STATE + 2 * READ:].T
        one = read @ w[:, STATE:STATE + READ].T
        other = read @ w[:, STATE + READ:STATE + 2 * READ].T
        hidden = torch.relu(base + one[:m] + other[m:]) + torch.relu(base + one[m:] + other[:m])
        return state + self.out(hidden), mark


class Net(torch.nn.Module):
    def __init__(self, mark_inputs=MARK_INPUTS):
        super().__init__()
        self.link_in = torch.nn.Linear(LINK_INPUTS, STATE)
        self.mark_in = torch.nn.Linear(mark_inputs, MARK)
        self.rounds = torch.nn.ModuleList([Round() for _ in range(ROUNDS)])
        self.hidden = torch.nn.Linear(STATE, HIDDEN)
        self.score = torch.nn.Linear(HIDDEN, 1)
        self.root = torch.nn.Linear(MARK, 1)
        for name, size in (("link_mean", LINK_INPUTS), ("mark_mean", mark_inputs)):
            self.register_buffer(name, torch.zeros(size))
        for name, size in (("link_sd", LINK_INPUTS), ("mark_sd", mark_inputs)):
            self.register_buffer(name, torch.ones(size))
        torch.nn.init.zeros_(self.root.weight)

    def scale_to(self, lessons):
        for name in ("link", "mark"):
            values = torch.cat([x["of_" + name] for x in lessons])
            getattr(self, name + "_mean").copy_(values.mean(0))
            getattr(self, name + "_sd").copy_(values.std(0) + 0.05)

    def forward(self, batch):
        away = torch.cat([batch["direction"], batch["direction"] + math.pi])
        ends = torch.cat([batch["first"], batch["second"]])
        turns = torch.arange(HARMONICS)
        has = batch["has_fan"][:, None]
        fan = batch["fan"]
        off = fan[ends] - away
        has_at = batch["has_fan"][ends]
        view = dict(ends=ends, cos=torch.cos(away[:, None] * turns), sin=torch.sin(away[:, None] * turns),
                    fan_cos=torch.cos(fan)[:, None] * has, fan_sin=torch.sin(fan)[:, None] * has,
                    fan2_cos=torch.cos(2 * fan)[:, None] * has, fan2_sin=torch.sin(2 * fan)[:, None] * has,
                    fan=torch.stack([torch.cos(off) * has_at, torch.cos(2 * off) * has_at, torch.sin(off) * has_at], 1))
        state = torch.relu(self.link_in((batch["of_link"] - self.link_mean) / self.link_sd))
        mark = torch.tanh(self.mark_in((batch["of_mark"] - self.mark_mean) / self.mark_sd))
        for one_round in self.rounds:
            state, mark = one_round(state, mark, batch, view)
        score = self.score(torch.relu(self.hidden(state)))[:, 0]
        return 8 * torch.tanh(score / 8), 4 * torch.tanh(self.root(mark)[:, 0] / 4)


def loss_of(lesson, log_weight, log_root):
    """Minus the log chance of the true systems, a mark."""
    n, i, j = lesson["n"], lesson["first"], lesson["second"]
    weight, root = torch.exp(log_weight.double()), torch.exp(log_root.double())
    inside = (lesson["system"][i] == lesson["system"][j]).double()

    def log_sum(weights, roots):
        matrix = torch.zeros(n, n, dtype=torch.float64).index_put((i, j), weights, accumulate=True)
        matrix = matrix + matrix.T
        return 2 * torch.log(torch.diagonal(torch.linalg.cholesky(torch.diag(matrix.sum(1) + roots) - matrix))).sum()

    held = log_sum(weight * inside, root * HARDLY_A_ROOT) - lesson["parts"] * math.log(HARDLY_A_ROOT)
    return (log_sum(weight, root) - held) / n


def mean_losses(net, lessons):
    sums = {}
    with torch.no_grad():
        for lesson in lessons:
            sums.setdefault(lesson["kind"], []).append(float(loss_of(lesson, *net(together([lesson])))))
    return {kind: round(sum(losses) / len(losses), 4) for kind, losses in sorted(sums.items())}


def learn(lessons, check, epochs, batch_size=6):
    random.seed(1)
    torch.manual_seed(1)
    net = Net(lessons[0]["of_mark"].shape[1])
    net.scale_to(lessons[:200])
    rate = torch.optim.Adam(net.parameters(), lr=2e-3, weight_decay=1e-5)
    steps = epochs * (len(lessons) // batch_size)
    cycle = torch.optim.lr_scheduler.OneCycleLR(rate, 4e-3, total_steps=steps + 1, pct_start=0.15)
    for epoch in range(epochs):
        random.shuffle(lessons)
        began, total = time.time(), 0.0
        for step in range(len(lessons) // batch_size):
            chosen = lessons[step * batch_size:(step + 1) * batch_size]
            batch = together(chosen)
            if random.random() < 0.5:
                batch = mirrored(batch)
            weight, root = net(batch)
            links, marks = batch["links"], batch["marks"]
            loss = sum(loss_of(x, weight[links[k]:links[k + 1]], root[marks[k]:marks[k + 1]]) for k, x in enumerate(chosen)) / batch_size
            rate.zero_grad()
            loss.backward()
            torch.nn.utils.clip_grad_norm_(net.parameters(), 1.0)
            rate.step()
            cycle.step()
            total += float(loss)
        print(f"epoch {epoch}: {total * batch_size / len(lessons):.4f}, checked {mean_losses(net, check)}, {time.time() - began:.0f} s", flush=True)
    return net


def write_scores(net, lessons, path):
    with open(path, "wb") as out, torch.no_grad():
        for lesson in lessons:
            weight, root = net(together([lesson]))
            np.array([LESSON_WORD, lesson["kind"], lesson["seed"], lesson["wanted"], lesson["n"], lesson["m"]], "<u4").tofile(out)
            weight.numpy().astype("<f4").tofile(out)
            root.numpy().astype("<f4").tofile(out)


def write_tables(net, path):
    tables = []

    def put(name, values):
        values = np.atleast_2d(values.detach().numpy())
        unit = float(f"{max(np.abs(values).max(), 1e-6) / 8191:.6g}")
        rows = "\n".join(" ".join(str(int(round(float(x) / unit))) for x in row) for row in values)
        tables.append(f"{name} {values.shape[0]} {values.shape[1]} {unit:.6g}\n{rows}\n")

    def layer(name, weight, bias=None):
        put(name, weight.T)
        if bias is not None:
            put(name + ".bias", bias)

    for name in ("link_mean", "link_sd", "mark_mean", "mark_sd"):
        put(name, getattr(net, name))
    layer("link_in", net.link_in.weight, net.link_in.bias)
    layer("mark_in", net.mark_in.weight, net.mark_in.bias)
    for number, one in enumerate(net.rounds, 1):
        name = f"round{number}."
        layer(name + "gates", one.say.weight[:CHANNELS], one.say.bias[:CHANNELS])
        layer(name + "values", one.say.weight[CHANNELS:], one.say.bias[CHANNELS:])
        layer(name + "surroundings", one.felt.weight, one.felt.bias)
        layer(name + "mark", one.mark.weight, one.mark.bias)
        layer(name + "triangle_gates", one.triangle.weight[:TRIANGLE], one.triangle.bias[:TRIANGLE])
        layer(name + "triangle_values", one.triangle.weight[TRIANGLE:], one.triangle.bias[TRIANGLE:])
        layer(name + "crossing", one.crossing.weight, one.crossing.bias)
        w = one.hear.weight
        layer(name + "own", w[:, :STATE], one.hear.bias)
        layer(name + "end_one", w[:, STATE:STATE + READ])
        layer(name + "end_other", w[:, STATE + READ:STATE + 2 * READ])
        layer(name + "around", w[:, STATE + 2 * READ:])
        layer(name + "out", one.out.weight, one.out.bias)
    layer("hidden", net.hidden.weight, net.hidden.bias)
    layer("score", net.score.weight, net.score.bias)
    layer("root", net.root.weight, net.root.bias)
    with open(path, "w") as out:
        out.write("".join(tables))


def main():
    call = argparse.ArgumentParser()
    call.add_argument("lessons")
    call.add_argument("tables")
    call.add_argument("--epochs", type=int, default=7)
    call.add_argument("--lessons", dest="most", type=int, default=10**9)
    call.add_argument("--leave-out", type=int, action="append", default=[])
    call.add_argument("--check")
    call.add_argument("--told", action="store_true")
    call.add_argument("--scores")
    given = call.parse_args()
    check = read_lessons(given.check, told=given.told) if given.check else []
    net = learn(read_lessons(given.lessons, given.leave_out, given.most, given.told), check, given.epochs)
    write_tables(net, given.tables)
    if given.scores:
        write_scores(net, check, given.scores)


main()
