@echo off
rem Starts Boltlore on the Java that lies in it, or else on the one that JAVA_HOME names, or else on the one in the path.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if exist "%~dp0..\java\bin\java.exe" set "java=%~dp0..\java\bin\java.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
    echo boltlore: Java is missing. Install Java 17 or newer, or set JAVA_HOME to it. 1>&2
    exit /b 69
)
if not exist "%~dp0..\lib\boltlore.jar" (
    echo boltlore: the library boltlore.jar is missing or damaged. Install Boltlore again. 1>&2
    exit /b 70
)
set "heap=-Xms192m -Xmn96m -Xmx288m"
for %%c in (choose ask orders prove) do if "%~1"=="%%c" set "heap=-Xms32m -Xmx512m"
if "%~1"=="desk" set "heap=-Xms96m -Xmn64m -Xmx512m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=30 -XX:TieredStopAtLevel=4"
"%java%" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC %heap% -Djava.awt.headless=true -Dfile.encoding=UTF-8 %BOLTLORE_JVM_FLAGS% -jar "%~dp0..\lib\boltlore.jar" %*
exit /b %errorlevel%
