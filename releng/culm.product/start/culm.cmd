@echo off
rem culm [FOLDER]       opens the window on a folder of designs, or on the examples
rem culm COMMAND ...    does one thing without a window; "culm help" lists the commands
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -version >nul 2>&1 || (echo culm: Java 17 or newer is needed; install one, or set JAVA_HOME 1>&2 & exit /b 2)
for %%j in ("%here%plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%~fj"
if not defined CULM_PLUG_INS set "CULM_PLUG_INS=%here%plug-ins"
set "options=-Xshare:auto -Djava.awt.headless=true"
if "%~1"=="" goto examples
if "%~1"=="plug-ins" goto command
if not "%~2"=="" goto command
if exist "%~1\*" goto window
:command
rem Long work is worth the optimising compiler, though not twice for each loop; a short command ends before that pays.
set "quick=-XX:TieredStopAtLevel=1"
for %%w in (tolerances vary map choose) do if "%~1"=="%%w" set "quick=-XX:Tier4BackEdgeThreshold=10000000"
"%java%" %options% "-Dculm.plugIns=%CULM_PLUG_INS%" %quick% -jar "%launcher%" -application culm.cli.app -nosplash -data @none -configuration "%LOCALAPPDATA%\Culm\command" %*
exit /b %ERRORLEVEL%
:examples
set "studio=%here%examples\studio"
goto open
:window
set "studio=%~1"
:open
rem While it opens, the optimising compiler would take from the window what it gives: it waits until code has run ten times as often.
set "later=-XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000"
"%java%" %options% %later% "-Dculm.plugIns=%CULM_PLUG_INS%" "-Dculm.state=%LOCALAPPDATA%\Culm\state" -jar "%launcher%" -application culm.workbench.app -nosplash -data @noDefault -configuration "%LOCALAPPDATA%\Culm\window" "%studio%"
exit /b %ERRORLEVEL%
