// Routes by OMPL's planners on the seeded maps of crates/driving, with the same collision test and the same cost.
//
// Built with OMPL 1.5.2 (Debian's libompl-dev):
//
//     g++ -O2 -std=c++17 -I/usr/include/ompl-1.5 -I/usr/include/eigen3 ompl_routes.cpp -lompl -o ompl_routes
//     ./ompl_routes lengths 30 > ompl_lengths.csv    best length in 30 s a planner on 20 maps, and a lower bound
//     ./ompl_routes times 2 < ours.csv > ompl_times.csv    processor time until a way as cheap as ours, at most 2 s
//
// `ours.csv` is what `cargo bench -p driving --bench route -- list` prints: seed, cost of our way, our time; the first
// 20 of its 50 maps were asked.
//
// Lower bound: Dijkstra's algorithm for the pivot over cells of half the map's size that the disc of half the
// machine's width about it may be in, 16 neighbours, divided by the greatest detour of such steps (1.0275), less
// the diagonal of a cell at either end.

#include <ompl/base/objectives/PathLengthOptimizationObjective.h>
#include <ompl/base/objectives/StateCostIntegralObjective.h>
#include <ompl/base/spaces/ReedsSheppStateSpace.h>
#include <ompl/geometric/SimpleSetup.h>
#include <ompl/geometric/planners/informedtrees/BITstar.h>
#include <ompl/geometric/planners/rrt/RRTConnect.h>
#include <ompl/geometric/planners/rrt/RRTstar.h>
#include <ompl/util/RandomNumbers.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <queue>
#include <vector>

namespace ob = ompl::base;
namespace og = ompl::geometric;

constexpr double CELL = 0.25, RADIUS = 2.8, PIVOT = -1.5, HALF_WIDTH = 1.2;
constexpr int REACH = 12;  // cells: 3 m, within which metres are dearer

struct SplitMix64 {
    uint64_t state;
    uint64_t next() {
        state += 0x9E3779B97F4A7C15ULL;
        uint64_t z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31);
    }
    int below(int most) { return int(next() % uint64_t(most)); }
};

struct Box {
    double rear, front, half;
};
// Of the pivot, halfway between axles 3 m apart.
const Box BOXES[2] = {{-3.9 - PIVOT, 0.8 - PIVOT, 1.2}, {0.8 - PIVOT, 2.4 - PIVOT, 0.6}};

struct Map {
    int n;
    std::vector<char> closed;
    std::vector<uint32_t> counts;
    std::vector<float> near, cost;  // near: m to the nearest closed middle, at most REACH cells
    double from[3], to[3];

    Map(uint64_t seed, int size, bool costs) : n(size), closed(size_t(size) * size), cost(size_t(size) * size, 1.0f) {
        SplitMix64 rng{seed};
        int e = n / 8, ends[2][3];
        for (int k = 0; k < 2; ++k) {
            int base = k ? 6 * e : e;
            for (int j = 0; j < 2; ++j) ends[k][j] = base + rng.below(e);
            ends[k][2] = rng.below(360);
        }
        for (int k = 0; k < n * n * 3 / 5000; ++k) {
            int w = 4 + rng.below(29), h = 4 + rng.below(29);
            int c0 = rng.below(n - w), r0 = rng.below(n - h);
            bool skip = false;
            for (auto &p : ends)
                skip |= p[0] + 24 >= c0 && p[0] <= c0 + w + 24 && p[1] + 24 >= r0 && p[1] <= r0 + h + 24;
            if (skip) continue;
            for (int r = r0; r < r0 + h; ++r) std::fill_n(&closed[size_t(r) * n + c0], w, 1);
        }
        if (costs)
            for (int k = 0; k < 12; ++k) {
                int c = rng.below(n), r = rng.below(n), s = n / 16 + rng.below(n / 8);
                for (int i = 0; i < n * n; ++i) {
                    double dc = i % n - c, dr = i / n - r;
                    cost[i] += float(1.5 * std::max(0.0, 1.0 - (dc * dc + dr * dr) / (double(s) * s)));
                }
            }
        for (int r = 0; r < n; ++r) {
            uint32_t count = 0;
            counts.push_back(0);
            for (int c = 0; c < n; ++c) counts.push_back(count += closed[size_t(r) * n + c]);
        }
        near.resize(closed.size());
        for (int r = 0; r < n; ++r)
            for (int c = 0; c < n; ++c) {
                int best = REACH * REACH;
                for (int dr = -REACH; dr <= REACH; ++dr)
                    for (int dc = -REACH; dc <= REACH; ++dc) {
                        int d = dr * dr + dc * dc, rr = r + dr, cc = c + dc;
                        if (d >= best) continue;
                        if (rr < 0 || cc < 0 || rr >= n || cc >= n || closed[size_t(rr) * n + cc]) best = d;
                    }
                near[size_t(r) * n + c] = float(std::sqrt(double(best)) * CELL);
            }
        if (costs)
            for (size_t i = 0; i < cost.size(); ++i)
                cost[i] = float(cost[i] * (1.0 + std::max(0.0, 1.0 - near[i] / (REACH * CELL))));
        for (int k = 0; k < 2; ++k) {
            double *p = k ? to : from, a = ends[k][2] * M_PI / 180.0;
            p[0] = (ends[k][0] + 0.5) * CELL + PIVOT * std::cos(a);
            p[1] = (ends[k][1] + 0.5) * CELL + PIVOT * std::sin(a);
            p[2] = a;
        }
    }

    double costAt(double x, double y) const {
        int c = int(std::floor(x / CELL)), r = int(std::floor(y / CELL));
        return c < 0 || r < 0 || c >= n || r >= n ? 1.0 : cost[size_t(r) * n + c];
    }

    bool clearDiscs(const Box &b, double x, double y, double s, double c) const {
        double length = b.front - b.rear;
        int discs = int(std::ceil(length / (1.5 * b.half)));
        double step = length / discs, around = std::sqrt(b.half * b.half + 0.25 * step * step);
        for (int k = 0; k < discs; ++k) {
            double along = b.rear + step * (k + 0.5);
            int cc = int(std::floor((x + c * along) / CELL)), rr = int(std::floor((y + s * along) / CELL));
            if (cc < 0 || rr < 0 || cc >= n || rr >= n) return false;
            if (near[size_t(rr) * n + cc] - CELL * M_SQRT2 <= around) return false;
        }
        return true;
    }

    bool meets(const Box &b, double x, double y, double s, double c) const {
        if (clearDiscs(b, x, y, s, c)) return false;
        double px[4], py[4];
        const double bx[4] = {b.rear, b.front, b.front, b.rear}, by[4] = {-b.half, -b.half, b.half, b.half};
        double low = INFINITY, high = -INFINITY;
        for (int i = 0; i < 4; ++i) {
            px[i] = (x + c * bx[i] - s * by[i]) / CELL;
            py[i] = (y + s * bx[i] + c * by[i]) / CELL;
            if (!(px[i] >= 0 && py[i] >= 0 && px[i] < n && py[i] < n)) return true;
            low = std::min(low, py[i]);
            high = std::max(high, py[i]);
        }
        for (int row = int(low); row <= int(high); ++row) {
            double west = INFINITY, east = -INFINITY;
            for (int i = 0; i < 4; ++i) {
                int a = i, d = (i + 1) % 4;
                if (py[a] > py[d]) std::swap(a, d);
                if (py[d] < row || py[a] > row + 1) continue;
                bool flat = py[a] == py[d];
                auto at = [&](double v) { return px[a] + (v - py[a]) / (py[d] - py[a]) * (px[d] - px[a]); };
                double u = flat ? px[a] : at(std::max(double(row), py[a]));
                double v = flat ? px[d] : at(std::min(double(row) + 1, py[d]));
                west = std::min({west, u, v});
                east = std::max({east, u, v});
            }
            if (west <= east) {
                int c0 = std::max(0, int(west)), c1 = std::min(n - 1, int(east));
                const uint32_t *p = &counts[size_t(row) * (n + 1)];
                if (p[c1 + 1] > p[c0]) return true;
            }
        }
        return false;
    }

    bool free(double x, double y, double heading) const {
        double s = std::sin(heading), c = std::cos(heading);
        return !meets(BOXES[0], x, y, s, c) && !meets(BOXES[1], x, y, s, c);
    }

    double lowerBound() const {
        const int m = 2 * n;
        const double fine = CELL / 2;
        std::vector<char> open(size_t(m) * m);
        for (int r = 0; r < m; ++r)
            for (int c = 0; c < m; ++c) {
                double x = (c + 0.5) * fine, y = (r + 0.5) * fine, least = HALF_WIDTH + 1;
                int reach = 7;
                for (int rr = r / 2 - reach; rr <= r / 2 + reach; ++rr)
                    for (int cc = c / 2 - reach; cc <= c / 2 + reach; ++cc) {
                        if (rr >= 0 && cc >= 0 && rr < n && cc < n && !closed[size_t(rr) * n + cc]) continue;
                        double dx = std::max({cc * CELL - x, x - (cc + 1) * CELL, 0.0});
                        double dy = std::max({rr * CELL - y, y - (rr + 1) * CELL, 0.0});
                        least = std::min(least, std::hypot(dx, dy));
                    }
                open[size_t(r) * m + c] = least + fine * M_SQRT1_2 >= HALF_WIDTH;
            }
        std::vector<double> best(size_t(m) * m, INFINITY);
        auto cellOf = [&](const double *p) { return int(p[1] / fine) * m + int(p[0] / fine); };
        using Entry = std::pair<double, int>;
        std::priority_queue<Entry, std::vector<Entry>, std::greater<Entry>> queue;
        int start = cellOf(from), goal = cellOf(to);
        queue.push({best[start] = 0, start});
        while (!queue.empty()) {
            auto [d, i] = queue.top();
            queue.pop();
            if (d > best[i]) continue;
            if (i == goal) break;
            for (int dr = -2; dr <= 2; ++dr)
                for (int dc = -2; dc <= 2; ++dc) {
                    if (std::abs(dr) + std::abs(dc) > 3 || (std::abs(dr) != 1 && std::abs(dc) != 1)) continue;
                    int r = i / m + dr, c = i % m + dc;
                    if (r < 0 || c < 0 || r >= m || c >= m || !open[size_t(r) * m + c]) continue;
                    double there = d + std::hypot(dr, dc) * fine;
                    if (there < best[r * m + c]) queue.push({best[r * m + c] = there, r * m + c});
                }
        }
        return best[goal] / 1.0275 - 2 * fine * M_SQRT2;
    }
};

struct Integral : ob::StateCostIntegralObjective {
    const Map &map;
    Integral(const ob::SpaceInformationPtr &si, const Map &m) : ob::StateCostIntegralObjective(si, true), map(m) {}
    ob::Cost stateCost(const ob::State *s) const override {
        auto *p = s->as<ob::SE2StateSpace::StateType>();
        return ob::Cost(map.costAt(p->getX(), p->getY()));
    }
};

// Best cost in `seconds`, ended before once it is `enough`; and the seconds until then.
static std::pair<double, double> best(const Map &map, const char *planner, bool integral, double seconds, double enough) {
    ompl::RNG::setSeed(1);
    auto space = std::make_shared<ob::ReedsSheppStateSpace>(RADIUS);
    ob::RealVectorBounds bounds(2);
    bounds.setLow(0);
    bounds.setHigh(map.n * CELL);
    space->setBounds(bounds);
    og::SimpleSetup setup(space);
    auto si = setup.getSpaceInformation();
    si->setStateValidityChecker([&](const ob::State *s) {
        auto *p = s->as<ob::SE2StateSpace::StateType>();
        return map.free(p->getX(), p->getY(), p->getYaw());
    });
    si->setStateValidityCheckingResolution(0.1 / space->getMaximumExtent());
    ob::ScopedState<ob::ReedsSheppStateSpace> a(space), b(space);
    a->setXY(map.from[0], map.from[1]);
    a->setYaw(std::remainder(map.from[2], 2 * M_PI));
    b->setXY(map.to[0], map.to[1]);
    b->setYaw(std::remainder(map.to[2], 2 * M_PI));
    setup.setStartAndGoalStates(a, b);
    ob::OptimizationObjectivePtr objective;
    if (integral) objective = std::make_shared<Integral>(si, map);
    else objective = std::make_shared<ob::PathLengthOptimizationObjective>(si);
    setup.setOptimizationObjective(objective);
    if (!std::strcmp(planner, "RRT*")) setup.setPlanner(std::make_shared<og::RRTstar>(si));
    else if (!std::strcmp(planner, "BIT*")) setup.setPlanner(std::make_shared<og::BITstar>(si));
    else setup.setPlanner(std::make_shared<og::RRTConnect>(si));
    setup.setup();
    // Time of this process, so that others on the machine do not count.
    auto begin = std::clock();
    auto passed = [&] { return double(std::clock() - begin) / CLOCKS_PER_SEC; };
    auto pd = setup.getProblemDefinition();
    double found = INFINITY;
    ob::PlannerTerminationCondition done([&] {
        if (pd->hasExactSolution() && std::strcmp(planner, "RRTConnect")) {
            ob::PlannerSolution s(nullptr);
            if (pd->getSolution(s)) found = std::min(found, s.cost_.value());
        }
        return passed() > seconds || found <= enough;
    });
    pd->setIntermediateSolutionCallback([&](const ob::Planner *, const std::vector<const ob::State *> &, const ob::Cost c) {
        found = std::min(found, c.value());
    });
    setup.getPlanner()->solve(done);
    double took = passed();
    if (pd->hasExactSolution())
        found = std::min(found, pd->getSolutionPath()->cost(objective).value());
    return {found, took};
}

int main(int argc, char **argv) {
    ompl::msg::setLogLevel(ompl::msg::LOG_NONE);
    double seconds = argc > 2 ? std::atof(argv[2]) : 5;
    if (argc > 1 && !std::strcmp(argv[1], "lengths")) {
        std::printf("# seed, lower bound, best length of RRT*, of BIT* (m) in %g s each; inf: no way found; OMPL 1.5.2\n", seconds);
        for (int seed = 1; seed <= 20; ++seed) {
            Map map(seed, 160, false);
            double rrt = best(map, "RRT*", false, seconds, 0).first, bit = best(map, "BIT*", false, seconds, 0).first;
            std::printf("%d,%.3f,%.3f,%.3f\n", seed, map.lowerBound(), rrt, bit);
            std::fflush(stdout);
        }
        return 0;
    }
    std::printf("# seed, our cost, our time (ms), cost and time (ms) of RRT*, of BIT* until as cheap or %g s, of RRTConnect's first way (processor time); OMPL 1.5.2\n", seconds);
    int seed;
    double cost, ms;
    while (std::scanf("%d,%lf,%lf", &seed, &cost, &ms) == 3) {
        Map map(seed, 800, true);
        std::printf("%d,%.2f,%.2f", seed, cost, ms);
        for (const char *planner : {"RRT*", "BIT*", "RRTConnect"}) {
            auto [c, t] = best(map, planner, true, seconds, cost);
            std::printf(",%.2f,%.1f", c, t * 1e3);
        }
        std::printf("\n");
        std::fflush(stdout);
    }
}
