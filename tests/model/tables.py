"""Tables of woods, metals and threads for the independent statement of the model.

Woods: density in kg/m3 at about 12 % moisture, modulus in GPa, change per size and per percent of
moisture across the grain, radial and tangential.  Sources: Forest Products Laboratory, Wood Handbook
(FPL-GTR-190, 2010), tables 5-3 and 13-5; M. Chudnoff, Tropical Timbers of the World (1984).  Where a
range or two values are printed, the middle stands here.  None: not known.

Metals: modulus in GPa, yield in MPa, density in kg/m3.  Sources: R. C. Hibbeler, Mechanics of Materials;
data sheets to ASTM B16 and B36.  Threads: major diameter, pitch, stress area, tap drill (ISO 724,
ISO 898-1, ASME B1.1).
"""


def _from_green(basic):
    """Air-dry density from the basic specific gravity (Wood Handbook, chapter 4, from memory)."""
    return 1120.0 * basic / (1.0 - 0.159 * basic)


def _middle(a, b):
    return (a + b) / 2.0


WOODS = {
    "maple_hard": (1120 * 0.63, 12.6, 0.00165, 0.00353),
    "maple_red": (1120 * 0.54, 11.3, 0.00137, 0.00289),
    "maple_silver": (1120 * 0.47, 7.9, 0.00102, 0.00252),
    "walnut_black": (1120 * 0.55, 11.6, 0.00190, 0.00274),
    "cherry_black": (1120 * 0.50, 10.3, 0.00126, 0.00248),
    "ash_white": (1120 * 0.60, 12.0, 0.00169, 0.00274),
    "oak_white": (1120 * 0.68, 12.3, 0.00180, 0.00365),
    "oak_red": (1120 * 0.63, 12.5, 0.00158, 0.00369),
    "beech": (1120 * 0.64, 11.9, 0.00190, 0.00431),
    "birch_yellow": (1120 * 0.62, 13.9, 0.00256, 0.00338),
    "pear": (690.0, 7.8, 0.00133, 0.00407),
    "mahogany_honduras": (_from_green(0.45), 10.3, _middle(0.00102, 0.00172), _middle(0.00141, 0.00238)),
    "mahogany_african": (_from_green(0.42), 9.7, _middle(0.00085, 0.00141), _middle(0.00155, 0.00201)),
    "meranti_dark_red": (_from_green(_middle(0.46, 0.55)), 11.7, 0.00130, 0.00278),
    "cedar_spanish": (_from_green(0.41), 9.9, 0.00144, 0.00219),
    "rosewood_indian": (_from_green(0.70), 12.3, 0.00092, 0.00201),
    "padauk_african": (_from_green(_middle(0.55, 0.67)), 12.1, 0.00112, 0.00180),
    "purpleheart": (_from_green(0.67), 15.7, 0.00109, 0.00212),
    "ebony_african": (_from_green(0.82), 17.7, None, None),
    "goncalo_alves": (_from_green(_middle(0.75, 0.84)), 15.4, 0.00137, 0.00267),
    "bubinga": (_from_green(_middle(0.65, 0.78)), 15.2, _middle(0.00137, 0.00267), _middle(0.00230, 0.00365)),
}

METALS = {
    "brass_cartridge_annealed": (112.0, 145.0, 8530.0),
    "brass_cartridge_half_hard": (112.0, 350.0, 8530.0),
    "brass_cutting_half_hard": (97.0, 310.0, 8490.0),
    "stainless_304": (193.0, 207.0, 7860.0),
    "steel_mild": (200.0, 250.0, 7850.0),
    "aluminium_6061_t6": (68.9, 255.0, 2710.0),
}

THREADS = {
    "M2.5": (2.5, 0.45, 3.39, 2.05),
    "M3": (3.0, 0.5, 5.03, 2.5),
    "M3.5": (3.5, 0.6, 6.78, 2.9),
    "M4": (4.0, 0.7, 8.78, 3.3),
    "M5": (5.0, 0.8, 14.2, 4.2),
    "M6": (6.0, 1.0, 20.1, 5.0),
    "6-32": (3.505, 0.79375, 5.86, 2.705),
    "8-32": (4.166, 0.79375, 9.04, 3.454),
    "10-24": (4.826, 1.05833, 11.31, 3.797),
    "10-32": (4.826, 0.79375, 12.9, 4.039),
    "1/4-20": (6.35, 1.27, 20.53, 5.105),
}
