#include "check.h"

static double
stack_height (const RwLengthList *courses)
{
  double height = 0.0;

  for (int k = 0; k < courses->count; k++)
    height += courses->at[k];
  return height;
}

static void
check_lists (RwCheck *check)
{
  int thick = check->used->rim_course_thickness.count, woods = check->used->rim_course_wood.count;

  rw_check_add (check, thick == woods ? RW_FINE : RW_CAUTION,
                "rim.course_lists", "rim.course_wood rim.course_thickness",
                N_("{1} thicknesses of courses stand against {2} woods. Weight and movement count only the "
                   "courses that have both; make the lists equally long."),
                thick, woods);
}

static void
check_stack (RwCheck *check)
{
  const RwLengthList *courses = &check->used->rim_course_thickness;
  double height = check->used->rim_height, blank = stack_height (courses), top = 0.0;

  if (blank < height)
    rw_check_add (check, rw_check_low (blank, height, RW_NEVER, RW_NEVER),
                  "rim.stack_low", "rim.course_thickness rim.height rim.blank_height",
                  N_("The courses make a stack of {1 mm} for a rim {2 mm} high: {3 mm} are missing. Add a "
                     "course, or make them thicker or the rim lower."),
                  blank, height, height - blank);
  else
    rw_check_add (check, rw_check_low (blank - height, RW_NEVER, RW_NEVER, check->used->limits_facing),
                  "rim.stack_facing", "rim.course_thickness rim.height rim.blank_height",
                  N_("Only {1 mm} of the stack are over for facing top and back true; {2 mm} is little "
                     "enough."),
                  blank - height, check->used->limits_facing);
  for (int k = 0; k < courses->count; k++)
    {
      rw_check_add (check, top >= height ? RW_CAUTION : RW_FINE,
                    "rim.course_unused", "rim.course_thickness rim.height",
                    N_("Course {1} begins {2 mm} down, under the back edge at {3 mm}: it is turned away "
                       "whole. Leave it out."),
                    k + 1, top, height);
      top += courses->at[k];
    }
}

/* Neighbouring courses are turned so that their joints are bridged, as bricks are. */
static void
check_bond (RwCheck *check)
{
  const double *turn = &check->at[RW_RIM_COURSE_TURN];
  double step = 360.0 / check->used->rim_segments, least = G_MAXDOUBLE;

  for (int k = 1; k < check->used->rim_course_thickness.count; k++)
    least = fmin (least, fabs (remainder (turn[k + 1] - turn[k], step)) / step);
  rw_check_add (check, rw_check_low (least, RW_NEVER, check->used->limits_stagger, RW_NEVER),
                "rim.joints_in_line", "rim.course_turn rim.course.turn[2]",
                N_("Joints of neighbouring courses stand only {1} of a segment apart, and joints in line "
                   "cost strength. Turn each course by about half a segment, as bricks are laid."),
                least);
}

/* Wood from the edge of a hole to a glue line or joint; negative where the hole cuts it. */
static void
check_hole (RwCheck    *check,
            double      wood,
            const char *rule,
            const char *ids,
            const char *cuts,
            const char *spares)
{
  rw_check_add (check, rw_check_low (wood, RW_NEVER, 0.0, check->used->limits_hole_wood),
                rule, ids,
                wood < 0.0 ? cuts : spares,
                fabs (wood));
}

static void
check_holes (RwCheck *check)
{
  check_hole (check, check->at[RW_RIM_HOLE_TO_GLUE_LINE], "rim.hole_to_glue_line",
              "rim.course_thickness shoes.below_edge joint.rod_upper rim.hole_to_glue_line",
              N_("A hole reaches {1 mm} over the glue line between two courses, where the drill wanders and "
                 "the line may open. Raise or lower the holes, or change the thickness of the courses."),
              N_("Only {1 mm} of wood stand between a hole and the glue line between two courses. Mark out "
                 "with care, or raise or lower the holes."));
  check_hole (check, check->at[RW_RIM_HOLE_TO_JOINT], "rim.hole_to_joint",
              "rim.course_turn hooks.count rim.segments rim.hole_to_joint",
              N_("A hole reaches {1 mm} over a joint of segments, which is weak end grain. Turn the courses "
                 "by another share of a segment, or move the hooks."),
              N_("Only {1 mm} of wood stand between a hole and a joint of segments. Turn the courses by "
                 "another share of a segment, or move the hooks."));
}

void
rw_check_courses (RwCheck *check)
{
  if (check->used->rim_construction != RW_RIM_SEGMENTS)
    return;
  check_lists (check);
  check_stack (check);
  check_bond (check);
  check_holes (check);
}
