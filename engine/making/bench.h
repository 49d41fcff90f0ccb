/* A build on the bench: every part cut to the size that is planned for it, or a little off.
 *
 * On paper sizes follow from each other; on the bench each is a fact once it is cut.  So all that is cut, drilled
 * or set is put into the model as measured: to its planned size, plus what it is off.  Neck angle and bridge height
 * are then facts, and the action follows from them.  The nut stands at its scale's length from the bridge, wherever
 * the neck meets the rim: the bridge finds its place on the head from that.  What the maker has measured already is
 * known, and is off no more.
 *
 * Neglects  what one cut does to another when a maker fits the second to the first instead of to the plan.
 */
#pragma once

#include "outcome.h"

/* Something that is cut, drilled or set, and by which operation of the shop. */
typedef struct
{
  int       param;     /* RwParamId, or -1 */
  int       slot;      /* RwSlot, or -1; both where an id is both */
  RwParamId operation; /* of the group "Care of the shop" */
  double    planned;
  double    scatter;   /* what the operation holds, +-: nineteen pieces of twenty */
  double    least, most;
} RwCut;

typedef struct
{
  RwDesign   design;
  RwMeasured measured; /* what was measured, and all cuts at their planned sizes */
  RwResult   planned;  /* what comes of that */
  double     outcomes[RW_OUTCOME_ALL];
  GArray    *cuts;     /* of RwCut */
  double     action_wanted;
  double     bridge_height; /* as measured, else as planned before anything was measured; NaN where neither is */
  double     bridge_rate;   /* of the action, mm for a mm of bridge height */
  gboolean   place_known;   /* the bridge's place has been measured */
} RwBench;

/* rw_bench_new: NULL where the side view has no solution, or asks for an angle that nobody cuts. */
RwBench *rw_bench_new  (const RwDesign *design, const RwMeasured *measured);
void     rw_bench_free (RwBench *bench);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwBench, rw_bench_free)

/* How many operations there are, and the place of one among them, from 0. */
#define RW_OPERATIONS (RW_P_scatter_head - RW_P_scatter_mitre + 1)
#define RW_OPERATION(k) ((RwParamId) (RW_P_scatter_mitre + (k)))

const RwCut *rw_bench_cut (const RwBench *bench, guint i);
/* "neck.angle", "frets.position[7]"; a new string. */
char        *rw_cut_id    (const RwCut *cut);
/* In the language of translate: see dim.h.  A new string. */
char        *rw_cut_label (const RwCut *cut, const char *(*translate) (const char *english));
const char  *rw_cut_unit  (const RwCut *cut);

/* rw_bench_try: the outcomes of a build whose cuts are off by so much, one for each cut, each held to what the size
 * can be.  Safe on several threads at once. */
void rw_bench_try (const RwBench *bench, const double *off, double *outcomes);
