"""Work sheets: what is to be done on one chart, in order, for whoever corrects it by hand.

Bulletins and perhaps a chart list come in; a sheet as HTML or PDF goes out, and a plot at the
scale of the chart to lay over it, as SVG or PDF.  Nothing is read or judged here.  PDF needs the
extra `sheet`.
"""
