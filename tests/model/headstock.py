"""The headstock unfolded into the plane of the board."""

import math


def post_rows(build, plan):
    """Posts by string: from the nut's back face, and from the centre line."""
    p, places = build.p, {}
    for m in range(1, plan.full // 2 + 1):
        places[m], places[plan.full + 1 - m] = (m, 1), (m, -1)
    pairs = plan.full // 2
    if plan.full % 2:
        pairs += 1
        places[plan.full // 2 + 1] = (pairs, 1)
    if plan.has_short and p["fifth.route"] == "tunnel":
        pairs += 1
        places[plan.count] = (pairs, -1)
    first, last, posts = p["headstock.post_across_first"], p["headstock.post_across_last"], {}
    for i, (pair, sign) in places.items():
        apart = first + (last - first) * (pair - 1) / (pairs - 1) if pairs > 1 else first
        x = p["headstock.post_first"] + (pair - 1) * p["headstock.post_pitch"]
        posts[i] = (build.row("headstock.post_x[%d]" % i, x),
                    build.row("headstock.post_y[%d]" % i, sign * apart / 2))
    return posts


class Headstock:
    """Posts, and the points where strings leave the back of the nut, both in plan."""

    def __init__(self, build, plan, posts, side_angle):
        self.build, self.plan = build, plan
        behind = build.p["nut.thickness"]
        # Unit vectors towards the body along the centre line, and square to it to the treble.
        along = (math.cos(side_angle), -math.sin(side_angle))
        across = (math.sin(side_angle), math.cos(side_angle))
        self.square = along if build.p["scale.square_to"] == "neck" else (1.0, 0.0)
        # The back face: points whose way along `square` from the nut's middle is -behind.
        reach = behind / (along[0] * self.square[0] + along[1] * self.square[1])
        self.origin = (-reach * along[0], plan.nut_middle - reach * along[1])
        self.posts = {i: tuple(self.origin[a] - x * along[a] + y * across[a] for a in (0, 1))
                      for i, (x, y) in posts.items()}

    def back_point(self, i):
        """Where string i, straight on in plan, crosses the back face of the nut."""
        plan, (sx, sy) = self.plan, self.square
        slope = (plan.bridge[i] - plan.nut[i]) / plan.length
        level = self.origin[0] * sx + self.origin[1] * sy
        x = (level - plan.nut[i] * sy) / (sx + slope * sy)
        return x, plan.nut[i] + slope * x

    def bend(self, i):
        x, y = self.back_point(i)
        straight = math.atan2(self.plan.nut[i] - self.plan.bridge[i], -self.plan.length)
        turned = math.atan2(self.posts[i][1] - y, self.posts[i][0] - x)
        return math.degrees(abs(math.remainder(turned - straight, 2 * math.pi)))

    def behind_nut(self, i):
        """After-length of string i on the headstock's side."""
        plan, p = self.plan, self.build.p
        if i <= plan.full:
            return p["nut.thickness"] + math.dist(self.back_point(i), self.posts[i])
        if p["fifth.route"] == "side_peg":
            return p["fifth.peg_distance"]
        return math.dist((plan.start, plan.start_y), self.posts[i])
